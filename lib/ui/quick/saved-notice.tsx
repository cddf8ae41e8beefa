import type { Route } from 'next';
import { ButtonLink } from '../page/button-link';
import { Notice } from '../page/notice';
import { fillPlaces } from './fill-places';
import type { QuickProps } from './quick-props';

type Props = {
  readonly props: QuickProps;
  readonly saved: { readonly kind: string; readonly record: string; readonly batchId: string };
  /** The page itself, for the next entry. */
  readonly page: 'harvest' | 'contamination' | 'check';
};

/** What the page says without script once the entry is recorded: the next step, and the way back. */
export function SavedNotice({ props, saved, page }: Props) {
  const { words, snapshot } = props;
  const own = page === 'contamination' ? words.finding : words[page];
  const code = snapshot.batches.find(({ id }) => id === saved.batchId)?.code ?? '';
  const back = `/batches/${saved.batchId}`;
  return (
    <>
      <title>{`${words.saved.sent} – ${words.form.product}`}</title>
      <h1>{words.saved.sent}</h1>
      <Notice>{fillPlaces(own.from, { code })}</Notice>
      <div className="answers">
        <ButtonLink href={`/quick/${page}?batch=${saved.batchId}` as Route}>
          {fillPlaces(own.again, { code })}
        </ButtonLink>
        <ButtonLink href={`/quick/${page}` as Route} plain>
          {own.another}
        </ButtonLink>
        <ButtonLink href={`/void/${saved.kind}/${saved.record}?back=${back}` as Route} plain>
          {words.saved.undo}
        </ButtonLink>
      </div>
      <p>
        <a className="tap" href={back}>
          {fillPlaces(words.saved.toBatch, { code })}
        </a>
      </p>
    </>
  );
}
