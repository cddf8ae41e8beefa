import type { ReactNode } from 'react';

export type Definition = { readonly label: string; readonly value: ReactNode };

/** Facts about one record: label and value, one a line. */
export function DefinitionList({ items }: { items: readonly Definition[] }) {
  return (
    <dl className="definitions">
      {items.map((item) => (
        <div key={item.label}>
          <dt>{item.label}</dt>
          <dd>{item.value}</dd>
        </div>
      ))}
    </dl>
  );
}
