# The page for teachers, "how it is computed". Numbers have a point in every language here; the page puts the reader's
# decimal sign. Lines of a text are paragraphs; lines of a table are rows, the first its head, with | between cells.
# Every number of a how-worked message is recomputed by a test (crates/exchange/tests/worked_cast.rs), in this order.

how-title = How it is computed
how-back = Back to the work
how-list = On this page
how-intro-text =
    For teachers: each rule in words and as a formula, where it comes from, and at the end one cast worked by hand.
    z is the depth in metres, 0 at the surface, more the deeper. T is the temperature in °C. A step lies between two neighbouring depths. A sign ^ stands before a power.
    After each source stands how we know it. <b>Read:</b> we saw the source, or the part we name. <b>Recalled:</b> from memory, so check it before you quote it. <b>Our choice:</b> no source prescribes it.

how-checks-title = Checks of the readings
how-checks-text =
    Each reading gets a flag: pass, not evaluated, suspect, fail or missing; the worst counts. Nothing is deleted. A reading that fails the first or second test waits outside the calculation until your group decides. The third test leaves nothing out.
    Readings repeated in time at one depth can also be tested for jumps and for standing still (rate of change, flat line). Along depth these two mean nothing.
how-checks-formula =
    Range: fail below −0.5 or above 40 °C, suspect below 0 or above 32 °C
    Spike: if both neighbours lie on the same side, the smaller of the two differences; suspect above 0.5 °C, fail above 1.0 °C
    Heavy over light: density falls on the way down by more than 0.01 kg per m³ (suspect) or 0.03 (fail)
how-checks-source = Source: QARTOD manual for temperature and salinity, U.S. IOOS 2016 (title pages read; the tests read in public code). 0.03 kg per m³: Argo quality control (recalled). Limits of range and spike: our choice for lakes.

how-corrections-title = Corrections
how-corrections-text =
    Each correction stands in a list and can be undone. What was written stays as it was.
    Probe check, before the trip: read it three times in stirred melting ice, and three times beside a second thermometer. Within 0.2 °C at both it is good, within 0.5 °C good enough for a class; further off it needs a correction or another probe.
    Lag: the probe had not settled when it was read. The share r of a step that was left over is the one that brings going down and coming up closest. Above 0.5 nothing is corrected: wait longer at each mark.
how-corrections-formula =
    Probe, in ice water: T = reading − reading in ice
    Probe, with a second thermometer: T = (reading − reading in ice) × second thermometer ÷ (reading beside it − reading in ice), if these two readings lie 5 °C or more apart
    Depth zero: z = mark − height of the rail or the ice above the water
    First mark: z = mark + distance from the zero of the marks to the sensor
    Stretch: z = mark × true length ÷ marked length
    Slant of a straight cable: z = length × cosine of its angle from the vertical
    Lag: T = (reading − r × reading before) ÷ (1 − r)
how-corrections-source = Source: probe check, USGS National Field Manual A6.1 and memorandum 79.16 (read in quotation), GLOBE Program (read); 5 °C, our choice. Slant: hydrographic practice (recalled). Lag: after the idea of Morison and others 1994, J. Atmos. Oceanic Technol. 11, 1151–1164 (abstract read).

how-pairs-title = Going down and coming up
how-pairs-text =
    Depths that were read twice tell how well a reading repeats: s, the standard deviation of one reading. Read once, s is taken as 0.1 °C; with fewer than 5 pairs it is at least 0.1 °C. It is never less than the last digit written allows.
    If one way reads warmer on the whole, the page says so: then it is not chance alone, but a slow probe, drift or time.
how-pairs-formula =
    d = going down − coming up
    s = root of (sum of all d² ÷ (2 × number of pairs))
    One way is warmer: mean of d beyond 2 × standard deviation of d ÷ root of the number of pairs; 4 pairs at least
    A pair is good: d up to 0.2 °C + 0.1 m × °C per metre there. Look again: up to 0.5 °C + the same. Read again: beyond
how-pairs-source = Source: usual in analytical quality control, as in Youden & Steiner 1975 (recalled; the algebra checked with a numerical library). 0.2 and 0.5 °C: our choice, after the USGS manual A6.1 and memorandum 79.16 (read in quotation).

how-steps-title = Profile and steps
how-steps-text =
    The profile has one temperature for each depth, the mean of its readings. Each step has a steepness, and a give or take that comes from s.
how-steps-formula =
    °C per metre = (T above − T below) ÷ (z below − z above)
    give or take of a profile value: e = s ÷ root of the number of readings in the mean
    give or take of a step: u = root of (e above² + e below²) ÷ (z below − z above)
how-steps-source = Source: field sheet of the IISD Experimental Lakes Area, Canada (read). Give or take: law of propagation, JCGM 100 (recalled).

how-state-title = Is there a layer at all?
how-state-text =
    This is asked before any depth is given. The ends are compared by density: top and bottom are the medians of the profile within 1 m of the first and the last reading (the two readings themselves if the cast spans 2 m or less). The first line that fits counts.
how-state-formula =
    gain = density at the bottom − density at the top
    Unstable: water lies on lighter water, by more than 0.03 kg per m³ and by no less than the gain; only depths that noise can’t swap are compared (T apart by 4.5 × root of (e above² + e below²))
    Under ice: the top is 0.5 °C colder than the bottom, or more, and the gain is above 0.01 kg per m³
    Mixed: the gain is less than 0.1 kg per m³
    Layered: a steep layer that counts (see there), or a gain of 0.5 kg per m³ or more
    Weakly layered: anything else
how-state-source = Source: our choice. On 58 real casts that we judged by eye it agrees in 47; of 713 casts on which field crews marked layers it calls 700 layered.

how-thermocline-title = Thermocline and its range
how-thermocline-text =
    The thermocline is the depth at which temperature falls fastest: the middle of the steepest step of the main layer. Equally steep steps side by side count as one.
    Its range, the span, takes in every step that the readings can’t tell from the steepest. If that is more than half of the cast, the answer is “these readings can’t tell”. Mixed water has no thermocline; under ice the page tells where it warms fastest, by the same rule.
how-thermocline-formula =
    thermocline = (z above + z below) ÷ 2 of the steepest step
    a step belongs to the span: °C per metre at least steepest − 2 × root of ((u steepest² + u of the step²) ÷ 2)
    span = from the top of its first step to the bottom of its last
how-thermocline-source = Source: Hutchinson 1957 (recalled; its wording, and the middle of the step, read in the sheet of the IISD Experimental Lakes Area). Span: our choice; in simulated casts it held the true depth in at least 94 %, where half a step either way held it in 47 to 97 %.

how-second-title = Second opinions on the thermocline
how-second-text =
    “Other rules” shows what else can be said of the same readings. None of it changes the answer, and none is given finer than 0.1 m.
    <b>Density:</b> the step in which density changes fastest. It lies at the thermocline or above it, because a degree weighs more in warm water.
    <b>Parabola:</b> the top of a parabola through the steepest bar and its two neighbours. <b>Balance point:</b> of the same three bars. <b>Smooth curve:</b> the steepest point of a curve through all profile values that never swings past them (PCHIP).
how-second-formula =
    density: the middle of the step with the largest N² (see Stability)
    parabola: with g1, g2, g3 °C per metre at the middles m1, m2, m3: first slope d1 = (g2 − g1) ÷ (m2 − m1), second slope d2 = (g3 − g2) ÷ (m3 − m2), bend c = (d2 − d1) ÷ (m3 − m1), depth = (m1 + m2) ÷ 2 − d1 ÷ (2c)
    balance point = sum of (°C lost × middle) ÷ sum of °C lost
how-second-source = Source: density, textbook physics (recalled). Parabola and balance point: common practice, no source. PCHIP: Fritsch & Carlson 1980, Fritsch & Butland 1984 (recalled; checked with a numerical library).

how-metalimnion-title = Steep layer (metalimnion)
how-metalimnion-text =
    The unbroken run of steep steps that holds the steepest one. Runs parted only by steps that the readings can’t tell from steep are one. A run counts only if its whole drop is more than chance makes. Below it lies the deep layer (hypolimnion).
how-metalimnion-formula =
    steep: 1 °C per metre or more (a class can choose 0.5 or 2)
    joined: the steps between lose 1 − 2u °C per metre or more
    counts: T at its top − T at its bottom is more than 2.8 × s
    range of an edge without trials: one step further out if that step loses 1 − 2u or more, one step further in if the outermost loses 1 + 2u or less; if neither, half a step either way
how-metalimnion-source = Source: 1 °C per metre, Birge 1897 and 1904 (recalled, not seen). 2.8 × s: repeatability limit of ISO 5725-6 (recalled). Joining: our choice.

how-warm-title = Today’s warm layer
how-warm-text =
    Sun and calm make a shallow warm layer that may be gone tomorrow. If there are several steep layers, the main one is that with the largest change of density across it. Another one that ends within 2 m of the surface is named “today’s warm layer”, and the season’s mixed layer is then also looked for from 2 m down.
    A lone steep layer is today’s only if it ends at 2 m or above, drops by less than 5 °C, and the cast goes on for 2 m or more below it.
how-warm-source = Source: the idea, “false epilimnion”, from the sheet of the IISD Experimental Lakes Area (read). The limits: our choice.

how-mixed-title = Mixed layer, the class’s rule
how-mixed-text =
    The first depth below 0.5 m at which the water is 1.0 °C colder (or warmer) than at 0.5 m, on a straight line between the readings around it. If that is not reached, the layer is mixed at least to the last reading. In mixed water it is so even if a step is that large, and under ice the rule is not used.
    Why 1.0 °C: it still works with class thermometers. With noise of 0.2 °C on a test lake, 95 % of the answers lay within 0.6 m; by 0.2 °C they were spread over 2.2 m.
how-mixed-formula =
    target = T at 0.5 m − 1.0
    depth = z above + (z below − z above) × (target − T above) ÷ (T below − T above)
    range without trials: 2 × e ÷ °C per metre × root of (1 + (1 − f)² + f²), where f is the place in the step, 0 to 1; no less than 0.05 m
how-mixed-source = Source: a difference from a reference depth, as in de Boyer Montégut and others 2004, J. Geophys. Res. 109, C12003 (abstract read). 1.0 °C: older use in seas and lakes (recalled). 0.5 m: our choice, below the skin of warm water.

how-others-title = Mixed layer, other published rules
how-others-text =
    <b>Temperature difference</b> of 0.2, 0.5 or 0.8 °C, and <b>density difference</b> of 0.03, 0.1 or 0.125 kg per m³: as the class’s rule, with another target.
    <b>Gradient:</b> the top, or the middle, of the first step of 1 °C per metre or more; or of 0.1 kg per m³ per metre.
    <b>Curvature:</b> the reading at which the curve bends most towards colder.
    <b>Largest angle:</b> a line through the reading and the three above it, another through it and the three below; the reading with the largest angle between them. Depth and temperature are first scaled from 0 to 1.
    <b>Broken stick:</b> constant down to a corner, then a straight line, as close to the readings as can be, down to the end of the steepest step. <b>Three layers:</b> constant, straight line, constant over the whole cast.
    They differ: on one and the same test lake fourteen rules gave 2.16 to 4.00 m. A rule belongs to every depth.
how-others-formula =
    curvature = 2 × (slope below − slope above) ÷ (step above + step below), slope = T gained per metre
    angle = arctangent of slope above − arctangent of slope below
    three layers: T = T1 + (T2 − T1) × share of the way from corner a to corner b
how-others-source = Source: 0.2 °C and 0.03 kg per m³, de Boyer Montégut and others 2004 (abstract read); 0.5 °C and 0.125 kg per m³, Levitus 1982, 0.8 °C, Kara and others 2000, 0.1 kg per m³, Wilson and others 2020, curvature, Lorbacher and others 2006, broken stick, Thomson & Fine 2003 (all recalled). Gradient: sheet of the IISD Experimental Lakes Area (read). Largest angle: Chu & Fan 2011, J. Oceanogr. 67 (abstract read). That rules differ widely: Wilson and others 2020, Gray and others 2020 (abstracts read).

how-chance-title = Ranges by repeated chance
how-chance-text =
    The page repeats your cast 10 000 times, each time with other errors of the kind yours may hold, and computes every depth again. What lies between two marks, which nobody read, is drawn too: the steepest place is anywhere in its step, and the mixed layer and the edges of the steep layer end where a curve between the marks, bent at random by as much as the steps around may be, has them. The range is the middle 95 % of the answers, widened to hold the depth that the rule gives. Only the thermocline keeps its span. It also says how often there was no such layer, and how often each step was the steepest. The same cast gives the same range on every computer: the chance is started from a fixed number.
how-chance-formula =
    new reading = reading + noise with s, less the rounding that s holds already + one shift of the probe for all (up to 0.2 °C either way) + rounding (half of the last digit either way)
    new depth = mark × one stretch for all (standard deviation 1 %) × cosine of one slant (0 to 5 degrees) + error of each mark (standard deviation 0.03 m)
    range = from the 2.5th to the 97.5th of 100 answers in order
how-chance-source = Source: JCGM 101:2008, propagation of distributions by a Monte Carlo method (title and contents read). Sizes of the errors: our choice.

how-density-title = Density of water
how-density-text =
    Always at the pressure of the surface, so that only warmth counts. Water is densest at 3.98 °C. Kell 1975, EOS-80 and Chen & Millero 1986 are built in for comparison. From 0 to 35 °C they differ from it by a few thousandths of a kg per m³, too little to move a class’s answer. Salt is added by EOS-80; the page itself works with fresh water.
how-density-formula =
    density = 999.974950 × (1 − (T − 3.983035)² × (T + 301.797) ÷ (522528.9 × (T + 69.34881))) kg per m³, from 0 to 40 °C
how-density-source = Source: Tanaka and others 2001, Metrologia 38, 301–309 (abstract and opening read; coefficients read in several public codes, all alike). Kell 1975 (read in a reprint with a slip, which we mended), EOS-80: UNESCO 1983 (read in public codes), Chen & Millero 1986 (coefficients read in public codes, range recalled).

how-stability-title = Stability
how-stability-text =
    How hard is it to mix this water? <b>N²</b> says it for one step: a parcel pushed up or down swings back, in a time of 6.283 ÷ N. <b>Resistance to mixing</b> compares a step with the difference between water at 4 and at 5 °C; it doubles if the step doubles. <b>Schmidt stability</b> is the work that it takes to mix the whole lake without warming or cooling it, for each square metre. The page asks for no depth map: the lake counts as a box down to the bed, or to the last reading if no bed was noted, and that gives several times too much work. Below the last reading its temperature goes on. Work is told only where it is more than 2 standard deviations of what the noise of the readings makes by itself. The work to mix only down to a depth is the same sum over the water above it.
    Wind is in the calculation, but not on the page: with an area and a wind, the Wedderburn and the lake number compare this work with the push of the wind. Well below 1, wind can tilt the layers up to the surface.
how-stability-formula =
    N² = 9.80665 ÷ mean density × (density below − density above) ÷ (z below − z above)
    resistance = (density below − density above) ÷ 0.008 kg per m³
    Schmidt = 9.80665 ÷ area × sum over thin slices of (z − z of the centre) × (density − mean density) × area of the slice × its thickness
    Schmidt of two layers in a box = 9.80665 × density difference × thickness of one × thickness of the other ÷ 2
    as lifting so many kg by 1 m: work ÷ 9.80665
    Wedderburn = 9.80665 × density difference ÷ density below × thickness of the upper layer² ÷ (u² × length), u² = push of the wind ÷ density below, push = 1.2 × 0.0013 × (wind in m per second)²
how-stability-source = Source: N², textbook physics (recalled; checked with an open library of exact densities). Resistance: Vallentyne 1957 (recalled). Schmidt 1928, Idso 1973, Limnol. Oceanogr. 18, 681–683 (titles read; formula recalled and checked on cases that can be solved by hand). Wind: Imberger & Patterson 1990 (contents read; formulas recalled).

how-oxygen-title = Oxygen saturation
how-oxygen-text =
    How much oxygen water holds in balance with air: less when it is warm, salty or high above the sea. The per cent is what was measured out of that, at the water’s temperature and the pressure at the surface of the lake. The page takes the water as fresh (S = 0).
how-oxygen-formula =
    K = T + 273.15
    natural logarithm of mg per litre = −139.34411 + 157570.1 ÷ K − 66423080 ÷ K^2 + 12438000000 ÷ K^3 − 862194900000 ÷ K^4
    with salt S in g per kg: − S × (0.017674 − 10.754 ÷ K + 2140.7 ÷ K^2) more
    pressure at height h in metres = (1 − 0.0000225577 × h)^5.25588 atmospheres
    at pressure p in atmospheres: that × (p − v) × (1 − q × p) ÷ ((1 − v) × (1 − q))
    v = 2.71828^(11.8571 − 3840.70 ÷ K − 216961 ÷ K^2), q = 0.000975 − 0.00001426 × T + 0.00000006436 × T²
how-oxygen-source = Source: Benson & Krause 1984, Limnol. Oceanogr. 29, 620–632 (coefficients read in ten public codes). Checked with the printed table: 14.621 at 0 °C, 9.870 at 16 °C (read). Height: standard atmosphere (recalled).

how-whatif-title = What if
how-whatif-text =
    The same cast as it would have come out if read differently: every 1 or 2 m, one way only, a shorter wait, coarser digits, worse marks. Readings are left out, rounded or given noise drawn from a fixed start, then everything is computed by the same rules, ranges too (with 2000 trials). It shows what care at the water is worth.
how-whatif-formula =
    shorter wait: reading = water + r × (reading before − water), r = 2.71828^(−wait ÷ time constant of the probe)
how-whatif-source = Source: first-order response of a probe, textbook physics (recalled). The rest follows from the rules above.

how-compare-title = Comparing two casts
how-compare-text =
    Class shows this under “Why they differ”, and a question asks about it. Two casts of one lake differ. Is it the probe (all T shifted alike), the zero of the marks (all depths shifted alike), stretch of the cable (more with depth), a warmed top, moved water, or nothing but chance? Each cause is fitted to the differences and scored: by what it leaves, by how free it was to fit, and by how usual its size is. The best is named, with those it can’t be told from, and it is said how much of the difference it explains and whether it leaves more than chance would: then it is not the only one, or none of these. A warmed top is held against what strong sun can bring, 1000 W per m².
    A cause is only named if it beats chance, and explains at least half of the difference or leaves no more than chance would: else none of them alone is the reason. How much that takes is found with 2000 pairs, made from a fixed start, that differ by chance alone: at most 5 in 100 of those may get a cause.
how-compare-formula =
    left over = sum of ((difference − what the cause predicts) ÷ its give or take)²
    heat gained, W per m² = 4180000 × sum of (T gained × thickness) ÷ seconds between
how-compare-source = Source: least squares, textbook (recalled). Score: after Jeffreys 1961 (recalled). Sun: recalled. Causes, usual sizes and limits: our choice.

how-worked-title = One cast, worked by hand
how-worked-text =
    The invented summer cast that the page offers as an example: 20 depths from 0 to 9.5 m, each read going down and coming up. A test recomputes every number below and fails if it differs.
how-worked-pairs-text =
    <b>Going down and coming up.</b> Of 20 pairs, the largest d is 0.3 °C. All d² add up to 0.40, so s is the root of 0.40 ÷ 40: 0.10 °C. The mean of d is 0.090 °C and its limit 2 × 0.112 ÷ root of 20 is 0.050: going down read warmer on the whole.
    A profile value, the mean of 2 readings, has e = 0.10 ÷ root of 2 = 0.071 °C. A step of 0.5 m has u = root of (0.071² + 0.071²) ÷ 0.5 = 0.20 °C per metre.
how-worked-steps-text =
    <b>Steps around the steepest.</b>
how-worked-steps-table =
    Step, m | T above, °C | T below, °C | °C lost | °C per metre
    2.5 – 3.0 | 22.75 | 21.80 | 0.95 | 1.9
    3.0 – 3.5 | 21.80 | 20.05 | 1.75 | 3.5
    3.5 – 4.0 | 20.05 | 17.55 | 2.50 | 5.0
    4.0 – 4.5 | 17.55 | 15.30 | 2.25 | 4.5
    4.5 – 5.0 | 15.30 | 13.50 | 1.80 | 3.6
how-worked-thermocline-text =
    <b>Thermocline.</b> The steepest step, 5.0 °C per metre, has its middle at (3.5 + 4.0) ÷ 2 = 3.75 m. A step belongs to the span from 5.0 − 2 × root of ((0.20² + 0.20²) ÷ 2) = 4.6 on. The next steepest has 4.5, so the span is this step alone: 3.5 to 4.0 m.
how-worked-mixed-text =
    <b>Mixed layer.</b> At 0.5 m it is 23.40 °C, so the target is 22.40 °C. That lies between 22.75 at 2.5 m and 21.80 at 3.0 m: 2.5 + 0.5 × (22.40 − 22.75) ÷ (21.80 − 22.75) = 2.68 m.
how-worked-metalimnion-text =
    <b>Steep layer.</b> The steps from 2.5 to 6.5 m lose 1.9, 3.5, 5.0, 4.5, 3.6, 2.6, 1.9 and 1.4 °C per metre: 8 in a row. The step above has 0.7, the step below 0.9. From top to bottom the run loses 22.75 − 10.55 = 12.20 °C, far more than 2.8 × 0.10 = 0.28 °C, so it counts.
how-worked-state-text =
    <b>State.</b> The median of the first three profile values is 23.40 °C, density 997.445 kg per m³; of the last three 9.00 °C, density 999.784. The gain is 2.339 kg per m³. No heavy water lies on light, the top is not colder, the gain is over 0.1, and a steep layer counts: layered.
how-worked-schmidt-text =
    <b>Schmidt stability.</b> As two layers that meet at the thermocline, 3.75 m of water at 23.40 °C and 5.75 m at 9.00 °C: 9.80665 × 2.339 × 3.75 × 5.75 ÷ 2 = 247 J per m². The whole profile, summed in thin slices, gives 235 J per m²: the work of lifting 24 kg by 1 m, over each square metre.
how-worked-n2-text =
    <b>N² of the steepest step.</b> Densities at 20.05 and 17.55 °C: 998.196 and 998.680 kg per m³. N² = 9.80665 ÷ 998.438 × 0.484 ÷ 0.5 = 0.0095 per s², and water pushed out of place there swings back and forth in 64 s.
how-worked-rules-text =
    <b>The same cast by other rules.</b>
how-worked-rules-table =
    Rule | Depth, m
    Thermocline: middle of the steepest step | 3.75
    Thermocline: density | 3.75
    Thermocline: balance point | 3.8
    Thermocline: parabola | 3.9
    Thermocline: smooth curve | 3.8
    Mixed layer: 1.0 °C | 2.68
    Mixed layer: 0.2 °C | 1.75
    Mixed layer: 0.5 °C | 2.29
    Mixed layer: 0.8 °C | 2.58
    Mixed layer: 0.03 kg per m³ | 1.56
    Mixed layer: 0.1 kg per m³ | 2.17
    Mixed layer: 0.125 kg per m³ | 2.32
    Mixed layer: gradient, top | 2.50
    Mixed layer: gradient, middle | 2.75
    Mixed layer: gradient of density | 2.00
    Mixed layer: curvature | 3.00
    Mixed layer: largest angle | 2.50
    Mixed layer: broken stick | 2.69
    Mixed layer: three layers | 2.45
how-worked-chance-text =
    <b>10 000 trials.</b> In 73 % of them the steepest step is the one from 3.5 to 4.0 m, in 26 % the one below. The mixed layer ends between 2.58 and 2.87 m in the middle 95 %.
how-worked-oxygen-text =
    <b>Oxygen.</b> Fresh water of 23.4 °C at sea level holds 8.51 mg per litre. At 300 m the pressure is 0.965 atmospheres, and it holds 8.21. A reading of 7.0 there is 85 %.
how-worked-probe-text =
    <b>Probe check.</b> In ice a probe read 0.3 °C three times, and 20.1 three times beside a thermometer at 20.0. Its worst error, 0.3 °C, is above 0.2 and within 0.5: good enough for a class, better corrected. A reading of 17.7 becomes (17.7 − 0.3) × 20.0 ÷ (20.1 − 0.3) = 17.58 °C.
