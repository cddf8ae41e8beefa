import type { Actor } from '@/lib/access/actor';

type Named = { readonly nameEn: string; readonly nameEs: string };

/** What an arm is called to a reader: one that is called as its method is has the method's name in the reader's language. */
export function armLabel(label: string, method: Named | null, language: Actor['language']): string {
  if (method === null) return label;
  const own = label.toLowerCase();
  if (own !== method.nameEn.toLowerCase() && own !== method.nameEs.toLowerCase()) return label;
  const name = language === 'es' ? method.nameEs : method.nameEn;
  return label.startsWith(own.charAt(0)) ? name.charAt(0).toLowerCase() + name.slice(1) : name;
}
