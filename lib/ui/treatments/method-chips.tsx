import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { Language, MethodKind } from '@/lib/database/generated/enums';
import { Link } from '../page/link';

type Method = { readonly id: string; readonly kind: MethodKind; readonly en: string; readonly es: string };
type Props = { readonly methods: readonly Method[]; readonly chosen: string; readonly language: Language };

/** How the load is treated, as links: the form below asks only for what that method has. */
export async function MethodChips({ methods, chosen, language }: Props) {
  const t = await getTranslations('treatments');
  return (
    <nav aria-label={t('methodLabel')} className="chips">
      {methods.map((method) => (
        <Link
          key={method.id}
          href={`/treatments/new?method=${method.id}` as Route}
          className={method.id === chosen ? 'button button-action' : 'button button-plain'}
          aria-current={method.id === chosen ? 'true' : undefined}
        >
          {method[language]}
        </Link>
      ))}
    </nav>
  );
}
