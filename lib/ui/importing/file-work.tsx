import { getLocale, getTranslations } from 'next-intl/server';
import type { ReactNode } from 'react';
import type { IntakeView } from '@/lib/intake/table/view-file';
import { Notice } from '../page/notice';
import { AddedLinks } from './added-links';
import { FileNotes } from './file-notes';
import { Progress } from './progress';
import { weakGuesses } from './weak-guesses';

type Act = (data: FormData) => Promise<void>;
type Props = {
  readonly file: IntakeView;
  readonly check: Act;
  readonly add: Act;
  readonly stop: Act;
};

function Step({ act, id, plain, children }: { act: Act; id: string; plain?: boolean; children: ReactNode }) {
  return (
    <form action={act}>
      <input type="hidden" name="id" value={id} />
      <button type="submit" className={`button ${plain ? 'button-plain' : 'button-action'}`}>
        {children}
      </button>
    </form>
  );
}

/** Where a table stands, in one sentence, and the next step. */
export async function FileWork({ file, check, add, stop }: Props) {
  const t = await getTranslations('import');
  const words = await getTranslations('vocabulary.intakeState');
  const locale = await getLocale();
  const { id, counts, state, missing } = file;
  if (state === 'waiting' || state === 'checking' || state === 'adding')
    return (
      <section aria-label={state === 'waiting' ? t('state.waiting') : words(state)}>
        <Progress
          key={state}
          id={id}
          work={{ state, done: file.done, total: file.total }}
          locale={locale}
          sentence={t.raw(`file.${state}`)}
        />
        <Step act={stop} id={id} plain>
          {t('file.stop')}
        </Step>
      </section>
    );
  const list = new Intl.ListFormat(locale, { type: 'conjunction' });
  const called = (name: string) => t(`fields.${name as 'batch'}`);
  const weak = await weakGuesses(file);
  const trouble =
    state === 'stopped'
      ? t('file.stopped')
      : file.trouble === 'stopped'
        ? t('file.cancelled')
        : file.trouble === 'failed'
          ? t('file.failed')
          : file.trouble === 'full'
            ? t('file.full')
            : undefined;
  const checked = counts.new + counts.there + counts.needs + counts.added > 0;
  const rows = counts.unread + counts.new + counts.there + counts.needs + counts.added;
  return (
    <section>
      {trouble === undefined ? null : <Notice tone="watch">{trouble}</Notice>}
      {checked ? (
        <p className="answer-sentence">
          {counts.added > 0
            ? t('file.added', { added: counts.added, there: counts.there, needs: counts.needs })
            : t('file.checked', { new: counts.new, there: counts.there, needs: counts.needs })}
        </p>
      ) : (
        <p className="answer-sentence">{t('file.uploaded', { rows })}</p>
      )}
      {checked && counts.unread > 0 ? <p>{t('file.unread', { count: counts.unread })}</p> : null}
      {counts.added > 0 ? <AddedLinks file={file} /> : null}
      <FileNotes file={file} />
      {missing.length > 0 ? (
        <Notice tone="watch">{t('file.missing', { fields: list.format(missing.map(called)) })}</Notice>
      ) : weak.length > 0 ? (
        <Notice tone="watch">{t('file.weak', { columns: list.format(weak) })}</Notice>
      ) : (
        <div className="chips">
          {counts.new > 0 ? (
            <Step act={add} id={id}>
              {t('file.add', { count: counts.new })}
            </Step>
          ) : null}
          <Step act={check} id={id} plain={counts.new > 0 || counts.added > 0}>
            {checked ? t('file.checkAgain') : t('file.check')}
          </Step>
        </div>
      )}
      {checked ? <p className="quiet">{t('file.aboutCounts')}</p> : null}
    </section>
  );
}
