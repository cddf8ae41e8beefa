import { getLocale } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { recordTableKinds } from '@/lib/growing/record-table-layout';
import { mostBytes } from '@/lib/intake/table/keep-file';
import { listFiles } from '@/lib/intake/table/list-files';
import { mostColumns, mostRows } from '@/lib/intake/table/read-table';
import { listFormSites } from '@/lib/records/site/list-form-sites.query';
import { problemText } from '@/lib/ui/form/problem-text';
import { dynamicWords } from '@/lib/ui/i18n/dynamic-words';
import { getReaderUnits } from '@/lib/ui/i18n/reader-units';
import { FileList } from '@/lib/ui/importing/file-list';
import { UploadForm } from '@/lib/ui/importing/upload-form';
import { otherSite } from '@/lib/ui/sites/other-site';
import { addressWith } from '@/lib/ui/table/address-with';

const one = (value: string | string[] | undefined) => (typeof value === 'string' ? value : '');
const most = { max: mostBytes / 1_000_000, rows: mostRows };

export default async function ImportPage({ searchParams }: PageProps<'/import'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const asked = one(address.siteId) || one(address.site);
  const { found, files } = await readAs(actor, async (context) => ({
    found: await listFormSites(context, { asked }),
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
  const { sites } = found;
  const [only] = sites;
  const site = sites.some(({ id }) => id === asked)
    ? asked
    : only !== undefined && sites.length === 1
      ? only.id
      : '';
  return (
    <>
      <UploadForm
        kinds={kinds}
        site={{ sites, other: await otherSite(found, addressWith('/import', { kind: address.kind }, {})) }}
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
