import { requirePositive } from '../check-argument';

/** (-1)^k (zeta(k) - 1) / k for k = 2, 3, ...: the Taylor series of log gamma about 2, from 40-digit arithmetic. */
const SERIES = [
  0.3224670334241132, -0.0673523010531981, 0.020580808427784546, -0.007385551028673986, 0.0028905103307415234,
  -0.001192753911703261, 0.0005096695247430425, -0.00022315475845357939, 9.945751278180853e-5,
  -4.492623673813314e-5, 2.050721277567069e-5, -9.439488275268397e-6, 4.374866789907488e-6,
  -2.039215753801366e-6, 9.55141213040742e-7, -4.492469198764566e-7, 2.1207184805554665e-7,
  -1.0043224823968099e-7, 4.7698101693639804e-8, -2.2711094608943164e-8, 1.0838659214896955e-8,
  -5.183475041970047e-9, 2.4836745438024785e-9, -1.1921401405860912e-9, 5.731367241678862e-10,
  -2.7595228851242334e-10, 1.330476437424449e-10, -6.4229645638381e-11, 3.1044247747322276e-11,
  -1.5021384080754142e-11, 7.275974480239079e-12, -3.527742476575915e-12,
];

const ONE_MINUS_EULER = 0.42278433509846713;
const LOG_SQRT_TWO_PI = 0.9189385332046728;

/**
 * log of the gamma function for x > 0; relative error near 1e-15 also beside its zeros at 1 and 2.
 *
 * About 2 the Taylor series (Abramowitz & Stegun 1964, 6.1.33), reached by the recurrence from 0 to 9; above,
 * Stirling's series (6.1.41).
 * @throws ArgumentError unless x is finite and above 0.
 */
export function logGamma(x: number): number {
  requirePositive('x', x);
  if (x < 0.5) return aboutTwo(x) - Math.log1p(x) - Math.log(x);
  if (x < 1.5) return aboutTwo(x - 1) - Math.log1p(x - 1);
  if (x < 2.5) return aboutTwo(x - 2);
  if (x < 9) {
    let product = 1;
    let lowered = x;
    while (lowered >= 2.5) {
      lowered -= 1;
      product *= lowered;
    }
    return Math.log(product) + aboutTwo(lowered - 2);
  }
  return (x - 0.5) * Math.log(x) - x + LOG_SQRT_TWO_PI + stirlingSeries(x);
}

/** 1/(12x) - 1/(360x^3) + ...: what Stirling's formula for log gamma(x) leaves out; for x >= 9. */
export function stirlingSeries(x: number): number {
  const w = 1 / (x * x);
  const tail = 1 / 1188 - w * (691 / 360360 - w * (1 / 156 - (w * 3617) / 122400));
  return (1 / 12 - w * (1 / 360 - w * (1 / 1260 - w * (1 / 1680 - w * tail)))) / x;
}

/** log gamma(2 + e) for |e| <= 0.5. */
function aboutTwo(e: number): number {
  let sum = 0;
  for (let index = SERIES.length - 1; index >= 0; index -= 1) sum = (SERIES[index] ?? 0) + e * sum;
  return e * (ONE_MINUS_EULER + e * sum);
}
