import type { QuickOutbox } from '@/lib/offline/quick-outbox';
import { PhotoAfter } from '../photo/photo-after';
import type { QuickProps } from './quick-props';
import type { QuickWords } from './quick-words';

/** What a quick entry gets once it can keep entries on the phone: the outbox, and a photo of what was just kept. */
export function withOutbox(
  outbox: QuickOutbox,
  words: QuickWords,
): Required<Pick<QuickProps, 'outbox' | 'afterKept'>> {
  return {
    outbox,
    afterKept: ({ id, kind, batchId }) => (
      <PhotoAfter
        outbox={outbox}
        of={kind === 'finding' ? { batchId, findingId: id, parentId: id } : { batchId }}
        words={words.photo}
      />
    ),
  };
}
