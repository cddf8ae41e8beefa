import { getLocale } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { recordTableKinds } from '@/lib/growing/record-table-layout';
import { mostBytes } from '@/lib/intake/table/keep-file';
import { listFiles } from '@/lib/intake/table/list-files';
import { mostColumns, mostRows } from '@/lib/intake/table/read-table';
import { listSites } from '@/lib/records/site/list-sites.query';
import { problemText } from '@/lib/ui/form/problem-text';
import { dynamicWords } from '@/lib/ui/i18n/dynamic-words';
import { getReaderUnits } from '@/lib/ui/i18n/reader-units';
import { FileList } from '@/lib/ui/importing/file-list';
import { UploadForm } from '@/lib/ui/importing/upload-form';

const one = (value: string | string[] | undefined) => (typeof value === 'string' ? value : '');
const most = { max: mostBytes / 1_000_000, rows: mostRows };

export default async function ImportPage({ searchParams }: PageProps<'/import'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const { sites, files } = await readAs(actor, async (context) => ({
    sites: await listSites(context),
    files: await listFiles(context, new Date()),
  }));
  const sentence = problemText(
    { words: await dynamicWords(), locale: await getLocale(), units: await getReaderUnits() },
    'import',
  );
  const code = one(address.problem);
  const field = ['kind', 'siteId'].find((name) => name === address.field) ?? 'file';
  const values = { ...most, columns: mostColumns };
  const kinds = recordTableKinds.filter(
    (kind) => actor.role === 'coordinator' || (kind !== 'sites' && kind !== 'people'),
  );
  const [only] = sites;
  const site = sites.some(({ id }) => id === address.site)
    ? one(address.site)
    : only !== undefined && sites.length === 1
      ? only.id
      : '';
  return (
    <>
      <UploadForm
        kinds={kinds}
        sites={sites.map(({ id, name }) => ({ value: id, label: name }))}
        most={most}
        values={{
          kind: kinds.find((kind) => kind === address.kind) ?? 'harvests',
          siteId: site,
        }}
        errors={
          /^[a-z]+(-[a-z]+)*$/.test(code)
            ? [{ field, text: sentence('errors', { field, code, values }) }]
            : []
        }
      />
      <div className="mt-10">
        <FileList files={files} timeZone={actor.networkTimeZone} />
      </div>
    </>
  );
}
