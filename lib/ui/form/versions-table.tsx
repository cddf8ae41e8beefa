type Props = {
  readonly words: { readonly field: string; readonly theirs: string; readonly yours: string };
  readonly rows: readonly {
    readonly key: string;
    readonly label: string;
    readonly theirs: string;
    readonly yours: string;
  }[];
};

/** Two versions of a record side by side, field by field; a field that one leaves empty shows a dash. */
export function VersionsTable({ words, rows }: Props) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{words.field}</th>
          <th scope="col">{words.theirs}</th>
          <th scope="col">{words.yours}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ key, label, theirs, yours }) => (
          <tr key={key}>
            <th scope="row">{label}</th>
            <td>{theirs || '–'}</td>
            <td>{yours || '–'}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
