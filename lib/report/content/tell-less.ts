import type { BuiltReport } from './build-content';
import { fewestHidden, type Sized } from './fewest-hidden';
import type { GroundPart, GroundSum } from './ground';
import { hideCells } from './hide-cells';
import { keepBack, saidKept } from './keep-back';
import { glanceLess, type Safe, trainingsLess } from './people-less';
import { tellsFew } from './tells-few';
import { type TablePart, toldTable, withTable } from './told-tables';

const sizeOf = ({ bySite }: GroundSum) => Object.values(bySite).reduce((sum, amount) => sum + amount, 0);

/** Cells of a table that are shown, and how much they are. */
function shownCells(report: BuiltReport, part: TablePart): Sized[] {
  const { table, known } = toldTable(report, part) ?? { table: { cells: [] }, known: [] };
  const shown = new Set(table.cells.filter(({ kind }) => kind === 'shown').map(({ key }) => key));
  return known.filter(({ key }) => shown.has(key)).map((sum) => ({ key: sum.key, amount: sizeOf(sum) }));
}

function hiding(report: BuiltReport, part: TablePart) {
  return (keys: ReadonlySet<string>): BuiltReport | undefined => {
    const told = toldTable(report, part);
    const hidden = told && hideCells(told, keys, report.content.rule);
    return hidden && withTable(report, part, hidden);
  };
}

/** A report with as few cells of a table hidden as is safe. */
function tableLess(report: BuiltReport, part: TablePart, safe: Safe): BuiltReport | undefined {
  return safe(report) ? report : fewestHidden(shownCells(report, part), hiding(report, part), safe);
}

/** Harvest by destination and by species are two tables of one total: neither may tell what the other hides. */
function harvestLess(report: BuiltReport, safe: Safe): BuiltReport | undefined {
  const both: Safe = (version) => {
    const [harvest, species] = [toldTable(version, 'harvest'), toldTable(version, 'protein')];
    const apart = harvest && species && tellsFew(harvest.known, species.known, version.content.rule, false);
    return !apart && safe(version);
  };
  const species = shownCells(report, 'protein').map(({ key }) => key);
  const bare = species.length === 0 ? report : hiding(report, 'protein')(new Set(species));
  const less = bare && tableLess(bare, 'harvest', both);
  const harvest = less && toldTable(less, 'harvest');
  if (!less || !harvest || species.length === 0) return less;
  return tableLess(withTable(report, 'harvest', harvest), 'protein', both) ?? less;
}

/** Rows of methods are numbers of their own: those that tell are kept back, and the others stand. */
function methodsLess(report: BuiltReport, safe: Safe): BuiltReport | undefined {
  const { content, ground } = report;
  const tables = Object.entries(ground.methods ?? {});
  const rows = new Map<string, number>();
  for (const sum of tables.flatMap(([, sums]) => sums))
    rows.set(sum.key, (rows.get(sum.key) ?? 0) + sizeOf(sum));
  if (content.methods.some(({ key }) => key === undefined)) return undefined;
  const hide = (keys: ReadonlySet<string>): BuiltReport => ({
    content: {
      ...content,
      methods: content.methods.map((row) =>
        keys.has(row.key ?? '')
          ? { ...row, contamination: { kind: 'protected' }, yield: { kind: 'protected' } }
          : row,
      ),
    },
    ground: {
      ...ground,
      methods: Object.fromEntries(
        tables.map(([name, sums]) => [name, sums.filter(({ key }) => !keys.has(key))]),
      ),
    },
  });
  return fewestHidden(
    [...rows].map(([key, amount]) => ({ key, amount })),
    hide,
    safe,
  );
}

const lessOf: Partial<Record<GroundPart, (report: BuiltReport, safe: Safe) => BuiltReport | undefined>> = {
  harvest: harvestLess,
  protein: harvestLess,
  residues: (report, safe) => tableLess(report, 'residues', safe),
  methods: methodsLess,
  trainings: trainingsLess,
  glance: glanceLess,
};

/**
 * A report of which a part, or several that tell one total, tells as much as is safe; nothing of it where any would tell of
 * few sites.
 */
export function tellLess(report: BuiltReport, parts: readonly GroundPart[], safe: Safe): BuiltReport {
  const [first] = parts;
  const less = first && lessOf[first]?.(report, safe);
  if (!less) return parts.reduce(keepBack, report);
  const changed = parts.filter((part) => parts.length === 1 || less.ground[part] !== report.ground[part]);
  return { ...less, content: changed.reduce(saidKept, less.content) };
}
