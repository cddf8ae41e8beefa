import type { Route } from 'next';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import { FigureCell } from '../figure/figure-cell';
import { Link } from '../page/link';
import type { InsightWords } from './insight-words';

/** A figure in a cell, pressed to see the batches behind it where there is a page of them. */
export function FigureLink({ figure, words }: { figure: ShownFigure; words: InsightWords }) {
  const cell = <FigureCell view={words.view(figure)} />;
  if (figure.rowsQuery === '') return cell;
  return (
    <Link href={`/comparison/rows?${figure.rowsQuery}` as Route} className="figure-link">
      {cell}
    </Link>
  );
}
