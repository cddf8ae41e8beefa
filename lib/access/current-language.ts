import 'server-only';
import { headers } from 'next/headers';
import type { Language } from '@/lib/database/generated/enums';
import { currentSigned } from './current';

/** Language and number region of the reader; before sign-in the browser's wish decides between the two we have. */
export async function currentLanguage(): Promise<{ language: Language; region: string }> {
  const signed = await currentSigned();
  if (signed) return { language: signed.person.language, region: signed.person.region };
  const wish = (await headers()).get('accept-language') ?? '';
  return /^es\b/i.test(wish.trim())
    ? { language: 'es', region: 'es-US' }
    : { language: 'en', region: 'en-US' };
}
