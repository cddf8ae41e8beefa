import { getTranslations } from 'next-intl/server';
import type { MethodKind } from '@/lib/growing/vocabulary';
import { Caution } from '../page/caution';
import { careOf } from '../treatments/method-care';

/** The dangers of the methods looked at, each once. */
export async function NextCautions({ kinds }: { readonly kinds: readonly MethodKind[] }) {
  const t = await getTranslations('treatments');
  const common = await getTranslations('common');
  const care = [...new Set(kinds.flatMap((kind) => careOf[kind]))];
  if (care.length === 0) return null;
  return (
    <Caution
      title={common('caution.title')}
      lines={[...care.map((one) => t(`care.${one}`)), common('caution.rule')]}
    />
  );
}
