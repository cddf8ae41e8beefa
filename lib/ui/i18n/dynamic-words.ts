import 'server-only';
import { getTranslations } from 'next-intl/server';

/** Words looked up by a key known only at run time (error codes, field names); a test checks that all codes exist. */
export type DynamicWords = {
  (key: string, values?: Record<string, string | number>): string;
  has(key: string): boolean;
};

export async function dynamicWords(): Promise<DynamicWords> {
  return (await getTranslations()) as unknown as DynamicWords;
}
