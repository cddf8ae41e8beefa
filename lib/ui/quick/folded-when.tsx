import type { ReactNode } from 'react';
import { errorOf, type FieldContext } from '../form/field-context';

type Props = {
  /** What is taken when nobody opens the fold: "Flush 2, today". */
  readonly summary: string;
  readonly names: readonly string[];
  readonly context: FieldContext;
  readonly children: ReactNode;
};

/** What is proposed and seldom changed, folded under a line that says it; open when something in it failed. */
export function FoldedWhen({ summary, names, context, children }: Props) {
  const failed = names.some((name) => errorOf(context, name) !== undefined);
  return (
    <details open={failed ? true : undefined}>
      <summary>{summary}</summary>
      <div className="record-fields">{children}</div>
    </details>
  );
}
