import { fillSheets } from '@/lib/labels/sheet/fill-sheets';
import { labelsPerPage, placeBox, type SheetLayout } from '@/lib/labels/sheet/sheet-layout';

type Props = {
  readonly layout: SheetLayout;
  readonly count: number;
  readonly firstPlace: number;
  /** What is seen, in words. */
  readonly alt: string;
};

/** The first sheet drawn small: which of its places will be printed on. */
export function SheetPreview({ layout, count, firstPlace, alt }: Props) {
  const [page = []] = fillSheets(layout, count, firstPlace);
  const used = new Set(page.map(({ place }) => place));
  const { pageWidthMm, pageHeightMm } = layout;
  return (
    <svg
      className="sheet-preview"
      role="img"
      aria-label={alt}
      viewBox={`-1 -1 ${pageWidthMm + 2} ${pageHeightMm + 2}`}
    >
      <rect width={pageWidthMm} height={pageHeightMm} className="sheet-page" />
      {Array.from({ length: labelsPerPage(layout) }, (_, place) => {
        const { leftMm, topMm, widthMm, heightMm } = placeBox(layout, place);
        return (
          <rect
            key={`${leftMm} ${topMm}`}
            x={leftMm + 0.8}
            y={topMm + 0.8}
            width={widthMm - 1.6}
            height={heightMm - 1.6}
            className={used.has(place) ? 'sheet-used' : 'sheet-free'}
          />
        );
      })}
    </svg>
  );
}
