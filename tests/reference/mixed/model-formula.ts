import type { FixedTerm, RandomTerm } from '../../../lib/stats/mixed/design/fixed-term';

/** A model formula of the reference files, as far as they go: `y ~ a + b + a:b + (1 | g) + (1 | g/h)`. */
export type ModelFormula = {
  readonly response: string;
  readonly intercept: boolean;
  /** Variables of each fixed term; more than one is an interaction. */
  readonly fixed: readonly (readonly string[])[];
  /** Variables whose combinations are the levels of each random intercept, in the order written. */
  readonly random: readonly (readonly string[])[];
  /** A random term with more than an intercept, which the library does not offer. */
  readonly hasRandomSlopes: boolean;
};

export function parseFormula(text: string): ModelFormula {
  const [left = '', ...rest] = text.replace(/\s+\(lm\).*$/s, '').split('~');
  const right = rest.join('~');
  const random: string[][] = [];
  let hasRandomSlopes = false;
  const fixedText = right.replace(/\(([^()|]+)\|([^()|]+)\)/g, (_, terms: string, group: string) => {
    if (terms.trim() !== '1') hasRandomSlopes = true;
    const nested = group.split('/').map((part) => part.split(':').map((name) => name.trim()));
    for (let depth = 1; depth <= nested.length; depth++) random.push(nested.slice(0, depth).flat());
    return '';
  });
  const fixed: string[][] = [];
  let intercept = true;
  for (const term of fixedText.split('+').map((part) => part.trim())) {
    if (term === '' || term === '1') continue;
    if (term === '0') intercept = false;
    else if (term.includes('*')) fixed.push(...crossed(term.split('*').map((name) => name.trim())));
    else fixed.push(term.split(':').map((name) => name.trim()));
  }
  fixed.sort((one, other) => one.length - other.length);
  return { response: left.trim(), intercept, fixed, random, hasRandomSlopes };
}

/** All main effects and interactions of a * b * ... */
function crossed(names: readonly string[]): string[][] {
  const terms: string[][] = [];
  for (const name of names) terms.push([name], ...terms.map((term) => [...term, name]));
  return terms;
}

export type DataColumns = Readonly<Record<string, readonly (string | number | null)[]>>;

/** The levels of each factor: as the file gives them, or as the columns of its design show, or sorted. */
export type LevelOrder = (name: string) => readonly string[];

export function levelOrder(
  data: DataColumns,
  given: Readonly<Record<string, readonly string[]>> | undefined,
  designNames: readonly string[] | undefined,
): LevelOrder {
  return (name) => {
    const present = new Set(column(data, name).map(String));
    const listed = given?.[name]?.filter((level) => present.has(level));
    if (listed) return listed;
    const sorted = [...present].sort();
    const inDesign = (designNames ?? []).flatMap((text) => {
      const level = text.startsWith(name) ? text.slice(name.length) : '';
      return present.has(level) ? [level] : [];
    });
    // The level without a column is the reference, and comes first.
    return inDesign.length === 0
      ? sorted
      : [...sorted.filter((level) => !inDesign.includes(level)), ...inDesign];
  };
}

export function column(data: DataColumns, name: string): readonly (string | number | null)[] {
  const values = data[name];
  if (!values) throw new Error(`the data have no column ${name}`);
  return values;
}

export function numbers(data: DataColumns, name: string): number[] {
  return column(data, name).map(Number);
}

export function fixedTerms(formula: ModelFormula, data: DataColumns, levels: LevelOrder): FixedTerm[] {
  return formula.fixed.map((names): FixedTerm => {
    const [name = '', ...others] = names;
    if (others.length > 0) return { kind: 'interaction', of: names };
    const values = column(data, name);
    return values.every((value) => typeof value === 'number')
      ? { kind: 'covariate', name, values: values.map(Number) }
      : { kind: 'factor', name, values: values.map(String), levels: levels(name) };
  });
}

/** The random terms in the order lme4 reports them: most levels first, ties in reverse when anything moves. */
export function randomTerms(formula: ModelFormula, data: DataColumns, levels: LevelOrder): RandomTerm[] {
  const terms = formula.random.map((names): RandomTerm => {
    const [only = '', ...others] = names;
    if (others.length === 0) {
      return { name: only, values: column(data, only).map(String), levels: levels(only) };
    }
    const parts = names.map((name) => column(data, name).map(String));
    const values = (parts[0] ?? []).map((_, row) => parts.map((part) => part[row]).join(':'));
    return { name: names.join(':'), values, levels: [...new Set(values)].sort() };
  });
  const counts = terms.map((term) => term.levels?.length ?? 0);
  if (!counts.some((count, k) => k > 0 && count > (counts[k - 1] ?? 0))) return terms;
  return terms
    .map((term, k) => ({ term, k, count: counts[k] ?? 0 }))
    .sort((a, b) => b.count - a.count || b.k - a.k)
    .map(({ term }) => term);
}
