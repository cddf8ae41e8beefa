import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { Urgency } from '@/lib/growing/due/urgency';
import { KeptCodes } from '../page/kept-codes';
import { Link } from '../page/link';
import type { DueText } from './due-words';

type Props = {
  readonly urgency: Urgency;
  readonly lines: readonly DueText[];
  /** Lines that stand open; the rest is behind one press. */
  readonly open: number;
};

function Lines({ lines }: { lines: readonly DueText[] }) {
  return (
    <ul className="due-lines">
      {lines.map(({ text, place, why, left, href }) => (
        <li key={`${href} ${text}`}>
          <Link href={href as Route}>
            <KeptCodes text={text} />
          </Link>
          {left === '' ? null : <span className="due-left"> {left}</span>}
          <span className="due-why quiet">
            {why} · {place}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** Lines of one urgency under its heading, each leading straight to the form it needs. */
export async function DueGroup({ urgency, lines, open }: Props) {
  const t = await getTranslations('today');
  if (lines.length === 0) return null;
  const shown = lines.slice(0, open);
  const folded = lines.slice(open);
  if (shown.length === 0)
    return (
      <details className="due-fold">
        <summary>
          {t(`group.${urgency}`)} ({folded.length})
        </summary>
        <Lines lines={folded} />
      </details>
    );
  return (
    <section aria-labelledby={`due-${urgency}`}>
      <h2 id={`due-${urgency}`}>{t(`group.${urgency}`)}</h2>
      <Lines lines={shown} />
      {folded.length === 0 ? null : (
        <details className="due-fold">
          <summary>{t('more', { count: folded.length })}</summary>
          <Lines lines={folded} />
        </details>
      )}
    </section>
  );
}
