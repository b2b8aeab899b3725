// Medians with their spread, and the lines the bench prints.

/** The value below which a share of the values lies. */
export function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (sorted.length - 1) * share;
  const low = sorted[Math.floor(at)];
  return low + (sorted[Math.ceil(at)] - low) * (at - Math.floor(at));
}

/** The middle value. */
export const median = (values) => quantile(values, 0.5);

const digits = (value) => value.toFixed(value < 1 ? 3 : value < 100 ? 2 : 0);

/** "1.23 (1.10 to 1.60)": the median, and between what the middle eight tenths lie. */
export function spread(values, unit = "") {
  const [low, middle, high] = [0.1, 0.5, 0.9].map((share) => digits(quantile(values, share)));
  return `${middle}${unit} (${low} to ${high})`;
}

/** The ratio of each pair, first by second. */
export const ratios = (first, second) => first.map((value, index) => value / second[index]);

/** One line: what, and what came out. */
export function line(what, value) {
  console.log(`   ${what.padEnd(52)} ${value}`);
}

/** Two things measured in turns, and their ratio. */
export function pair(first_name, first, second_name, second) {
  line(first_name, spread(first, " ms"));
  line(second_name, spread(second, " ms"));
  line("ratio, pair by pair", `${spread(ratios(first, second))}; of the medians ${digits(median(first) / median(second))}`);
}
