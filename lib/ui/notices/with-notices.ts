import { getTranslations } from 'next-intl/server';
import type { NoticeView } from '@/lib/records/lot-notice/notice-view';
import type { StartOptions } from '../batches/start-options';
import type { ChoiceOption } from '../form/field-spec';

/** The lists of the batch form with a word beside each lot that a notice is about. */
export async function withNotices(
  options: StartOptions,
  notices: readonly NoticeView[],
): Promise<StartOptions> {
  const t = await getTranslations('notices');
  const about = new Set(notices.map(({ lotId }) => lotId));
  const marked = (list: readonly ChoiceOption[]) =>
    list.map((option) =>
      about.has(option.value)
        ? {
            ...option,
            hint: [option.hint, t('choiceHint')].filter((part) => part !== undefined).join('; '),
          }
        : option,
    );
  return { ...options, spawn: marked(options.spawn), lots: marked(options.lots) };
}
