import type { Route } from 'next';
import type { NextChoice, NextPart, Outlook } from '@/lib/analysis/next-question/next-answer';
import { Link } from '../page/link';
import type { InsightWords } from './insight-words';
import { NextCautions } from './next-cautions';
import { startAddress } from './next-starts';

type Props = {
  readonly outlook: Outlook;
  readonly choice: NextChoice;
  readonly part: NextPart;
  /** What the answer advises; otherwise a quieter way beside it. */
  readonly advised: boolean;
  readonly words: InsightWords;
};

/** The way to begin with a method, its dangers before it. */
export function NextBegin({ outlook, choice, part, advised, words: { t, inSentence } }: Props) {
  const { kind, methodId } = outlook;
  return (
    <>
      <NextCautions kinds={[kind]} />
      <p className="chips no-print">
        <Link
          href={startAddress(choice, part, outlook) as Route}
          className={advised ? 'button button-action' : 'button button-plain'}
        >
          {t(kind === 'untreated' ? 'next.startBatch' : 'next.startTreatment', {
            method: inSentence(methodId),
          })}
        </Link>
      </p>
    </>
  );
}
