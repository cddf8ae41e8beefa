import { formWordsOf } from '../form/form-words';
import type { Messages } from '../messages/en';

/**
 * The words of the quick entries in one language, with the places of sentences open: plain data that a server page
 * hands to the client component and a page without signal carries in itself. `locale` is the reader's tag for figures.
 */
export function quickWordsOf(messages: Messages, locale: string) {
  const { quick, common, findings, photos, vocabulary, weighings } = messages;
  const { takePhoto, kept, keptNot, working, people } = photos;
  const { caution } = findings;
  const care = weighings.caution;
  return {
    ...quick,
    form: formWordsOf(common, locale),
    days: { today: common.today, yesterday: common.yesterday, other: common.otherDay },
    sign: vocabulary.contaminationSign,
    action: vocabulary.findingAction,
    stage: vocabulary.cropStage,
    checkKind: vocabulary.checkKind,
    photo: { takePhoto, kept, keptNot, working, people },
    caution: {
      title: caution.title,
      lines: [caution.keepClosed, caution.lastInLine, caution.doNotEat, common.caution.rule],
    },
    care: { title: care.title, lines: [care.spores, care.eating, common.caution.rule] },
  };
}

export type QuickWords = ReturnType<typeof quickWordsOf>;
