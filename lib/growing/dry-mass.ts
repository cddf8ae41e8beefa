import { type Answer, answer } from './answer';
import { refuseNegative } from './in-range';
import { dryMatterFraction, type WetBasisPercent } from './moisture-basis';

/** Dry grams in a wet mass: wet x (1 - wb / 100). 10 kg straw at 12 % wet basis holds 8.80 kg dry. */
export function dryGramsFromWet(wetGrams: number, moisture: WetBasisPercent): Answer<number> {
  return refuseNegative({ wetGrams }) ?? answer(wetGrams * dryMatterFraction(moisture));
}

/** Wet grams that a dry mass weighs at a moisture: dry / (1 - wb / 100). 8.80 kg dry is 29.33 kg at 70 %. */
export function wetGramsFromDry(dryGrams: number, moisture: WetBasisPercent): Answer<number> {
  return refuseNegative({ dryGrams }) ?? answer(dryGrams / dryMatterFraction(moisture));
}
