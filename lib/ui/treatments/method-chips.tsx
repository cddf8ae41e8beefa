import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { Language, MethodKind } from '@/lib/database/generated/enums';
import { Link } from '../page/link';
import { addressWith } from '../table/address-with';

type Method = { readonly id: string; readonly kind: MethodKind; readonly en: string; readonly es: string };
type Props = {
  readonly methods: readonly Method[];
  readonly chosen: string;
  readonly language: Language;
  /** The site that the form was opened for, which stays. */
  readonly siteId: string | undefined;
};

/** How the load is treated, as links: the form below asks only for what that method has. */
export async function MethodChips({ methods, chosen, language, siteId }: Props) {
  const t = await getTranslations('treatments');
  return (
    <nav aria-label={t('methodLabel')} className="chips">
      {methods.map((method) => (
        <Link
          key={method.id}
          href={addressWith('/treatments/new', { method: method.id, siteId }, {}) as Route}
          className={method.id === chosen ? 'button button-action' : 'button button-plain'}
          aria-current={method.id === chosen ? 'true' : undefined}
        >
          {method[language]}
        </Link>
      ))}
    </nav>
  );
}
