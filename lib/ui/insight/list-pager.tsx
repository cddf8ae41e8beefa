import type { Route } from 'next';
import { StepLinks } from '../page/step-links';
import { addressWith } from '../table/address-with';
import type { InsightWords } from './insight-words';
import type { PageOfList } from './page-of-list';

type Props = {
  readonly of: 'sites' | 'lots';
  readonly path: `/questions/${'sites' | 'treatments' | 'next' | 'lots'}`;
  readonly listed: Omit<PageOfList<unknown>, 'rows'>;
  readonly address: Readonly<Record<string, string | string[] | undefined>>;
  readonly words: InsightWords;
};

/** Which of those listed are here, and the way to the others; nothing where all are here. */
export function ListPager({ of, path, listed, address, words: { t } }: Props) {
  const { count, page, pages, perPage } = listed;
  if (pages === 1) return null;
  const at = (number: number) => addressWith(path, address, { page: String(number) }) as Route;
  return (
    <>
      <p>
        {t(`${of}.pager.shown`, {
          first: (page - 1) * perPage + 1,
          last: Math.min(page * perPage, count),
          count,
        })}
      </p>
      <StepLinks
        {...(page > 1 ? { previous: { href: at(page - 1), label: t(`${of}.pager.previous`) } } : {})}
        {...(page < pages ? { next: { href: at(page + 1), label: t(`${of}.pager.next`) } } : {})}
      />
    </>
  );
}
