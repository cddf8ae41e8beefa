import type { Route } from 'next';
import { Link } from './link';

type Step = { readonly href: Route; readonly label: string };

/** The way one step back and one on through what is shown in pages; a step that there is not is left out. */
export function StepLinks({ previous, next }: { readonly previous?: Step; readonly next?: Step }) {
  return (
    <p className="chips no-print">
      {previous === undefined ? null : (
        <Link className="button button-plain" href={previous.href} rel="prev">
          {previous.label}
        </Link>
      )}
      {next === undefined ? null : (
        <Link className="button button-plain" href={next.href} rel="next">
          {next.label}
        </Link>
      )}
    </p>
  );
}
