import path from 'node:path';
import { isValidElement, type ReactElement, type ReactNode } from 'react';
import type { FieldSpec } from '@/lib/ui/form/field-spec';
import { RecordForm } from '@/lib/ui/form/record-form';

/** Where a page leads on to instead of answering; what the framework's `redirect` throws in tests. */
export class Elsewhere extends Error {}

const app = path.resolve(import.meta.dirname, '../../app');

export type Asked = Readonly<Record<string, string>>;
type Shown = ReactElement<Record<string, unknown>>;
type Page = (props: { params: Promise<Asked>; searchParams: Promise<Asked> }) => Promise<Shown>;
type Answer =
  | { readonly to: string }
  | { readonly fields: readonly FieldSpec[]; readonly values: Readonly<Record<string, unknown>> };

/** What a page of signed-in people answers at an address. */
export async function openPage(route: string, address: string, params: Asked = {}): Promise<Shown> {
  const { default: page }: { default: Page } = await import(path.join(app, `(signed)/${route}/page.tsx`));
  const { searchParams } = new URL(address, 'http://here.invalid');
  return page({
    params: Promise.resolve(params),
    searchParams: Promise.resolve(Object.fromEntries(searchParams)),
  });
}

/** The fields of a page's form and their values, or where it leads on to. */
export async function openForm(route: string, address: string, params: Asked = {}): Promise<Answer> {
  try {
    let shown = await openPage(route, address, params);
    while (shown.type !== RecordForm && typeof shown.type === 'function')
      shown = await (shown.type as (props: unknown) => Promise<Shown>)(shown.props);
    const { fields, values } = shown.props as { fields: FieldSpec[]; values: Record<string, unknown> };
    return { fields, values };
  } catch (error) {
    if (error instanceof Elsewhere) return { to: error.message };
    throw error;
  }
}

/** The ids in the box of sites of a form, the one chosen, and the way to others. */
export function siteBox(answer: Answer) {
  if ('to' in answer) throw new Error(`led on to ${answer.to}`);
  const flat = (fields: readonly FieldSpec[]): readonly FieldSpec[] =>
    fields.flatMap((field) => (field.kind === 'group' ? flat(field.fields) : [field]));
  const box = flat(answer.fields).find(({ name }) => name === 'siteId');
  if (box?.kind !== 'select') throw new Error('no box of sites');
  return {
    options: box.options.map(({ value }) => value),
    chosen: answer.values.siteId,
    other: box.notListed,
  };
}

/** Where a search for a site leads on to, and what for. */
export function siteSearch(address: string) {
  const { pathname, searchParams } = new URL(address, 'http://here.invalid');
  return { page: pathname, next: searchParams.get('next') ?? '', for: searchParams.get('siteFor') };
}

/** Every element that a page answers with, as far as it is drawn already. */
export function elementsOf(node: ReactNode): Shown[] {
  if (Array.isArray(node)) return node.flatMap(elementsOf);
  if (!isValidElement<Record<string, unknown>>(node)) return [];
  return [node, ...elementsOf(node.props.children as ReactNode)];
}
