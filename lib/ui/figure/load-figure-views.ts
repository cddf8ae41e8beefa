import { getLocale, getTranslations } from 'next-intl/server';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type { MassUnit } from '@/lib/database/generated/enums';
import type { FigureView } from './figure-view';
import { toFigureView } from './to-figure-view';

/** Makes the words of any figure in the reader's language and unit; `timeZone` is the network's, for "data as of". */
export async function loadFigureViews(
  timeZone: string,
  massUnit: MassUnit,
): Promise<(figure: ShownFigure) => FigureView> {
  const words = {
    t: await getTranslations('figures'),
    common: await getTranslations('common.figure'),
    locale: await getLocale(),
    timeZone,
    massUnit,
  };
  const views = new Map<ShownFigure, FigureView>();
  return (figure) => {
    const known = views.get(figure);
    if (known !== undefined) return known;
    const view = toFigureView(figure, words);
    views.set(figure, view);
    return view;
  };
}
