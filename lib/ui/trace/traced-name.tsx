import type { TraceName } from '@/lib/records/trace/trace-view';
import { KeptCodes } from '../page/kept-codes';
import { Link } from '../page/link';
import { type TraceWords, tracedPath } from './trace-words';

type Props = { readonly name: TraceName | undefined; readonly words: TraceWords };

/** Something of a trace by its name, leading to its page where the reader may open it. */
export function TracedName({ name, words }: Props) {
  if (name === undefined) return <>{words.t('takenOut.hidden')}</>;
  if (!name.visible)
    return <>{words.t('outOfSight', { code: name.code ?? '–', site: name.siteName ?? '–' })}</>;
  return (
    <Link href={tracedPath(name)}>
      <KeptCodes text={words.name(name)} />
    </Link>
  );
}
