import 'server-only';
import { paragraphsOf } from '@/lib/base/paragraphs-of';
import type { DocumentStory } from '../document/report-document';
import { type Paper, sheet, writable } from './paper';
import { writeText } from './write-text';

const tallest = 230;

/** Height that the picture of a story takes, and how much smaller it is drawn than it is. */
function pictureFit({ width }: Paper, { picture }: DocumentStory, image: Uint8Array | undefined) {
  if (!picture || !image) return { scale: 0, height: 0 };
  const scale = Math.min(width / picture.widthPx, tallest / picture.heightPx, 1);
  return { scale, height: picture.heightPx * scale };
}

/** Space that the beginning of a story takes: its title, its picture and a line. */
export const storyBegins = (paper: Paper, story: DocumentStory, image: Uint8Array | undefined): number =>
  pictureFit(paper, story, image).height + 60;

/** A story with its picture, which a screen reader hears described. */
export function writeStory(
  paper: Paper,
  parent: PDFKit.PDFStructureElement,
  story: DocumentStory,
  image: Uint8Array | undefined,
): void {
  const { document, left } = paper;
  const { picture } = story;
  const shown = picture && image ? { picture, image } : undefined;
  const { scale, height } = pictureFit(paper, story, image);
  const shownWidth = shown ? shown.picture.widthPx * scale : 0;
  writeText(paper, parent, story.title, {
    tag: 'H3',
    sizePt: 12,
    bold: true,
    above: 10,
    below: 4,
    keepWith: height + 30,
  });
  if (shown) {
    const top = document.y;
    parent.add(
      document.struct(
        'Figure',
        { alt: writable(shown.picture.alt, paper), bbox: [left, top, left + shownWidth, top + height] },
        () => {
          document.image(Buffer.from(shown.image), left, top, { width: shownWidth, height });
        },
      ),
    );
    document.y = top + height + 8;
  }
  if (story.withdrawal !== undefined)
    writeText(paper, parent, story.withdrawal, { tag: 'P', sizePt: sheet.small, quiet: true, below: 4 });
  for (const paragraph of paragraphsOf(story.words))
    writeText(paper, parent, paragraph, { tag: 'P', sizePt: sheet.body, below: 6 });
}
