import type { Archive } from './open-archive';
import { localName, readPart } from './read-part';

export type Sheet = { readonly name: string; readonly part: string };

export type WorkbookParts = {
  readonly sheets: readonly Sheet[];
  /** Whether days are counted from 1904. */
  readonly from1904: boolean;
  readonly texts?: string;
  readonly styles?: string;
};

type Relation = { readonly type: string; readonly part: string };

/** The part that a target names, seen from a part in a folder; targets may begin at the root of the archive. */
function partOf(target: string, folder: string): string {
  const path = target.startsWith('/') ? target.slice(1) : `${folder}${target}`;
  const steps: string[] = [];
  for (const step of path.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '.' && step !== '') steps.push(step);
  }
  return steps.join('/');
}

async function relationsOf(archive: Archive, part: string): Promise<ReadonlyMap<string, Relation>> {
  const folder = part.slice(0, part.lastIndexOf('/') + 1);
  const relations = new Map<string, Relation>();
  const own = `${folder}_rels/${part.slice(folder.length)}.rels`;
  if (!archive.has(own)) return relations;
  await readPart(await archive.read(own), {
    open: (name, { Id, Type, Target }) => {
      if (name !== 'Relationship' || !Id || !Type || !Target) return;
      relations.set(Id, { type: Type.slice(Type.lastIndexOf('/') + 1), part: partOf(Target, folder) });
    },
  });
  return relations;
}

/** Where a workbook keeps its sheets, texts and styles (ECMA-376 part 1, 12.3 and 18.2). */
export async function workbookParts(archive: Archive): Promise<WorkbookParts> {
  const [book] = [...(await relationsOf(archive, '')).values()].filter(
    ({ type }) => type === 'officeDocument',
  );
  const part = book?.part ?? 'xl/workbook.xml';
  const relations = await relationsOf(archive, part);
  const sheets: Sheet[] = [];
  let from1904 = false;
  await readPart(await archive.read(part), {
    open: (name, attributes) => {
      if (name === 'workbookPr') from1904 = ['1', 'true'].includes(attributes.date1904 ?? '');
      if (name !== 'sheet') return;
      const id = Object.entries(attributes).find(([key]) => key.includes(':') && localName(key) === 'id');
      const found = relations.get(id?.[1] ?? '');
      // What is no table, such as a sheet of one chart, is of another type.
      if (found?.type === 'worksheet') sheets.push({ name: attributes.name ?? '', part: found.part });
    },
  });
  const first = (type: string) => [...relations.values()].find((one) => one.type === type)?.part;
  const [texts, styles] = [first('sharedStrings'), first('styles')];
  return { sheets, from1904, ...(texts ? { texts } : {}), ...(styles ? { styles } : {}) };
}
