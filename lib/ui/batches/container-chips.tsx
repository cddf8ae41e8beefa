import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { type ContainerKind, containerKinds } from '@/lib/growing/vocabulary';
import { Link } from '../page/link';

/** What it grows in, as links: the form below asks only for what that kind has. */
export async function ContainerChips({
  chosen,
  path,
  kinds = containerKinds,
}: {
  chosen: ContainerKind;
  path: string;
  kinds?: readonly ContainerKind[];
}) {
  const t = await getTranslations('batches');
  const words = await getTranslations('vocabulary.containerKind');
  return (
    <nav aria-label={t('containerLabel')} className="chips">
      {kinds.map((kind) => (
        <Link
          key={kind}
          href={`${path}${path.includes('?') ? '&' : '?'}container=${kind}` as Route}
          className={kind === chosen ? 'button button-action' : 'button button-plain'}
          aria-current={kind === chosen ? 'true' : undefined}
        >
          {words(kind)}
        </Link>
      ))}
    </nav>
  );
}
