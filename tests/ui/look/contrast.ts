/** Relative luminance of `#rrggbb`, 0 to 1, as WCAG 2.2 defines it. */
function luminance(colour: string): number {
  const channels = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255);
  const [red = 0, green = 0, blue = 0] = channels.map((one) =>
    one <= 0.04045 ? one / 12.92 : ((one + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio of two colours, 1 to 21 (WCAG 2.2, success criterion 1.4.3). */
export function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}
