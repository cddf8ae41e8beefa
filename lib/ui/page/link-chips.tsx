import type { Route } from 'next';
import { Link } from './link';

type Option = { readonly value: string; readonly label: string; readonly href: string };
type Props = { readonly label: string; readonly chosen: string; readonly options: readonly Option[] };

/** One choice of a few as links: each leads to the same page made for that choice. */
export function LinkChips({ label, chosen, options }: Props) {
  return (
    <nav aria-label={label} className="chips">
      {options.map((option) => (
        <Link
          key={option.value}
          href={option.href as Route}
          className={option.value === chosen ? 'button button-action' : 'button button-plain'}
          aria-current={option.value === chosen ? 'true' : undefined}
        >
          {option.label}
        </Link>
      ))}
    </nav>
  );
}
