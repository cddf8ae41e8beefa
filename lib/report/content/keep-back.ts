import type { BuiltReport } from './build-content';
import type { FunderReportContent, ReportCell, ReportTable } from './funder-report';
import type { GroundPart } from './ground';

type Content = FunderReportContent;

const nothing = { kind: 'protected' } as const;
const kept = ({ key }: { readonly key: string }): ReportCell => ({ key, kind: 'protected' });
const keptTable = ({ total, cells }: ReportTable) => ({ total: kept(total), cells: cells.map(kept) });

const keptSales = (sales: Content['sales']) =>
  sales.map(({ currency, outlets, grams, customers }) => ({
    ...{ currency, outlets: keptTable(outlets), grams: kept(grams), customers: kept(customers) },
  }));

const keptCost = (row: NonNullable<Content['costs']>['all']) => ({
  ...row,
  ...{ cost: nothing, margin: nothing, labourMinutesPerKg: null },
});

const keptCosts = ({ all, methods, ...rest }: NonNullable<Content['costs']>) => ({
  ...{ ...rest, all: keptCost(all), methods: methods.map(keptCost) },
});

const keptTrainings = ({ answers, ...rest }: NonNullable<Content['trainings']>) => ({
  ...{ ...rest, attendances: nothing, people: nothing, unnamedHeads: nothing },
  answers: answers.map((row) => ({ ...row, answers: nothing })),
});

/** What each part is when it tells nothing; practices are kept back one by one, a baseline with the changes. */
const keptParts: Partial<Record<GroundPart, (content: Content) => Partial<Content>>> = {
  glance: () => ({ peopleActive: nothing, batchesStarted: { key: 'total', kind: 'protected' } }),
  harvest: ({ harvest }) => ({ harvest: keptTable(harvest) }),
  protein: ({ protein }) => ({
    protein: protein.map((row) => ({ ...row, fresh: kept(row.fresh), range: nothing })),
  }),
  residues: ({ residues, residuesLeftOut }) => ({
    residues: keptTable(residues),
    ...(residuesLeftOut ? { residuesLeftOut: residuesLeftOut.map(kept) } : {}),
  }),
  trainings: ({ trainings }) => (trainings ? { trainings: keptTrainings(trainings) } : {}),
  sales: ({ sales }) => ({ sales: keptSales(sales) }),
  costs: ({ costs }) => (costs ? { costs: keptCosts(costs) } : {}),
  methods: ({ methods }) => ({
    methods: methods.map((row) => ({ ...row, contamination: nothing, yield: nothing })),
  }),
};

/** A report that says of a part that figures of it are kept back. */
export function saidKept(content: Content, part: GroundPart): Content {
  return { ...content, keptBack: [...new Set([...(content.keptBack ?? []), part])] };
}

/** A report whose part tells nothing: what can be done with one that no earlier report told. */
export function keepBack({ content, ground }: BuiltReport, part: GroundPart): BuiltReport {
  const keptPart = keptParts[part];
  if (!keptPart) return { content, ground };
  return {
    content: saidKept({ ...content, ...keptPart(content) }, part),
    ground: ground[part] === undefined ? ground : { ...ground, [part]: {} },
  };
}
