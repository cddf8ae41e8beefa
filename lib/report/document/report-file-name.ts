const longest = 60;

/** The name of a file of a report: its title in plain letters, and its version. */
export function reportFileName(
  report: { readonly title: string; readonly version: number },
  ending: string,
): string {
  const plain = report.title
    .normalize('NFD')
    .replaceAll(/\p{Diacritic}/gu, '')
    .replaceAll(/[^A-Za-z0-9]+/g, '-')
    .slice(0, longest)
    .replaceAll(/^-+|-+$/g, '')
    .toLowerCase();
  return `${plain === '' ? 'report' : plain}-version-${report.version}.${ending}`;
}
