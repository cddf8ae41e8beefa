import { getTranslations } from 'next-intl/server';
import { Caution } from '../page/caution';

/** What can hurt where contaminated units are handled (common practice). */
export async function MouldCaution() {
  const t = await getTranslations('findings.caution');
  const common = await getTranslations('common.caution');
  return (
    <Caution title={t('title')} lines={[t('keepClosed'), t('lastInLine'), t('doNotEat'), common('rule')]} />
  );
}
