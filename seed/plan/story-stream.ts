import { createHash } from 'node:crypto';
import { type SeededRandom, seededRandom } from '@/lib/stats/random/seeded-random';

/** A stream of random numbers for each thing of a story, by its name. */
export type StoryStreams = (...name: readonly (string | number)[]) => SeededRandom;

/**
 * Streams of one story. What a batch draws does not depend on what was drawn before it, so that a story told a day
 * later is the same story, with only that changed which the calendar changes.
 */
export function storyStreams(seed: number): StoryStreams {
  return (...name) => {
    const digest = createHash('sha256').update([seed, ...name].join(' '));
    return seededRandom(digest.digest().readUIntBE(0, 6));
  };
}
