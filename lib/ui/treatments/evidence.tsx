import { getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import { sources } from '@/lib/growing/sources';
import { treatmentEvidence } from '@/lib/growing/treatment-evidence';
import type { MethodKind } from '@/lib/growing/vocabulary';

/** What published trials reported for a method, with their sources; said plainly where nothing was found. */
export async function Evidence({ method, language }: { method: MethodKind; language: Language }) {
  const t = await getTranslations('treatments');
  const rows = treatmentEvidence.filter((row) => row.method === method);
  return (
    <details>
      <summary>{t('evidence.summary')}</summary>
      <p>{t('evidence.window')}</p>
      {rows.length === 0 ? (
        <p>{t('evidence.none')}</p>
      ) : (
        <ul>
          {rows.map((row) => (
            <li key={`${row.source} ${row.conditions.en}`}>
              {row.conditions[language]}: {row.outcome[language]} <cite>({sources[row.source]})</cite>
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}
