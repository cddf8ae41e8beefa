'use client';

import type { OpenBatch } from '@/lib/growing/open-batch';
import { proposeFlush } from '@/lib/growing/propose-flush';
import { errorOf, type FieldContext } from '../form/field-context';
import { describedBy, fieldId } from '../form/field-id';
import { FieldFrame } from '../form/fields/field-frame';
import type { QuickWords } from './quick-words';

const name = 'lines.0.flush';

/** The flush that a harvest of this day probably is; undefined while batch or day is not known. */
export function proposedFlush(batch: OpenBatch | undefined, day: string | undefined): number | undefined {
  if (!batch || !day) return undefined;
  const { lastFlush, lastPickedOn, flushGapDays } = batch;
  const earlier = lastFlush === null || lastPickedOn === null ? [] : [{ on: lastPickedOn, flush: lastFlush }];
  return proposeFlush(earlier, day, flushGapDays ?? undefined);
}

type Props = {
  /** What the box holds: proposed, or changed by hand. */
  readonly text: string;
  readonly change: (text: string) => void;
  readonly words: QuickWords;
  readonly context: FieldContext;
};

/** The flush, proposed and changed by one tap. */
export function FlushBox({ text, change, words, context }: Props) {
  const step = (by: number) => change(String(Math.max(1, (Number.parseInt(text, 10) || 0) + by)));
  const error = errorOf(context, name);
  return (
    <FieldFrame spec={{ name, label: words.fields.lines.flush }} context={context}>
      <span className="input-row">
        <button
          type="button"
          className="button button-plain step"
          aria-label={words.harvest.less}
          onClick={() => step(-1)}
        >
          −
        </button>
        <input
          id={fieldId(name)}
          name={name}
          type="text"
          inputMode="numeric"
          className="input input-day"
          value={text}
          onChange={(event) => change(event.target.value)}
          autoComplete="off"
          aria-invalid={error === undefined ? undefined : true}
          aria-describedby={describedBy(name, { hint: false, error: error !== undefined })}
        />
        <button
          type="button"
          className="button button-plain step"
          aria-label={words.harvest.plus}
          onClick={() => step(1)}
        >
          +
        </button>
      </span>
    </FieldFrame>
  );
}
