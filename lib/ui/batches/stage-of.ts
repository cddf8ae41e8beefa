import type { CropStage } from '@/lib/database/generated/enums';
import type { StoryEntry } from '@/lib/records/batch/batch-story';

/** The stage to propose: cropping once colonisation, pins or a harvest were written down. */
export function stageOf(story: readonly StoryEntry[]): CropStage {
  const begun = story.some(
    ({ kind, voidReason }) => voidReason === null && (kind === 'check' || kind === 'weighing'),
  );
  return begun ? 'cropping' : 'colonising';
}
