import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import { type Urgency, urgencies } from '@/lib/growing/due/urgency';
import type { DueLine } from '@/lib/records/today/due-line';
import type { TemperatureUnit } from '../format/temperature-text';
import { dynamicWords } from '../i18n/dynamic-words';
import { ButtonLink } from '../page/button-link';
import { KeptCodes } from '../page/kept-codes';
import { DueGroup } from './due-group';
import { dueWords } from './due-words';

type Props = {
  readonly lines: readonly DueLine[];
  readonly language: Language;
  readonly temperatureUnit: TemperatureUnit;
  readonly now: Date;
};

/** Clocks that run all stand open; of the rest so many that a phone shows them in about a screen each. */
const openLines: Readonly<Record<Urgency, number>> = {
  now: 20,
  overdue: 4,
  today: 6,
  soon: 0,
  season: 0,
  idle: 0,
};

/** The next step first and large; below it the rest by urgency, most of it folded. */
export async function DueList({ lines, language, temperatureUnit, now }: Props) {
  const t = await getTranslations('today');
  const locale = await getLocale();
  const reader = { words: await dynamicWords(), locale, language, temperatureUnit, now };
  const pressing = lines.filter(({ urgency }) => ['now', 'overdue', 'today'].includes(urgency));
  const [first] = pressing;
  const next = first && dueWords(first, reader);
  return (
    <>
      {next === undefined ? (
        <p>{t('nothingNow')}</p>
      ) : (
        <section aria-labelledby="due-next" className="due-next">
          <h2 id="due-next">{t('next')}</h2>
          <p className="chips">
            <ButtonLink href={next.href as Route}>
              <KeptCodes text={next.text} />
            </ButtonLink>
          </p>
          <p className="quiet">
            {next.left === '' ? null : <strong>{next.left} · </strong>}
            {next.why} · {next.place}
          </p>
        </section>
      )}
      {urgencies.map((urgency) => (
        <DueGroup
          key={urgency}
          urgency={urgency}
          open={openLines[urgency]}
          lines={lines
            .filter((line) => line.urgency === urgency && line !== first)
            .map((line) => dueWords(line, reader))}
        />
      ))}
    </>
  );
}
