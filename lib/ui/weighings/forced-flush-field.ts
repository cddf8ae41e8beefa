import { getTranslations } from 'next-intl/server';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import type { FieldSpec } from '../form/field-spec';

/** Containers whose flushes are often forced by soaking or shocking; nobody else is asked. */
export const forcedContainers: readonly ContainerKind[] = ['log', 'block', 'bed'];

/** Whether a flush was forced (soaked, shocked) or came by itself; may be left unsaid. */
export async function forcedFlushField(row: number): Promise<FieldSpec> {
  const t = await getTranslations('weighings');
  return {
    kind: 'radio',
    name: `lines.${row}.forcedFlush`,
    label: t(row === 0 ? 'forced.question' : 'forced.questionRow', { number: row + 1 }),
    options: (['no', 'yes'] as const).map((value) => ({ value, label: t(`forced.${value}`) })),
    optional: true,
  };
}
