import type { Language, MassUnit } from '@/lib/database/generated/enums';

export type StoryMember = {
  readonly name: string;
  readonly sites: readonly string[];
  readonly language: Language;
  readonly massUnit: MassUnit;
};

/** People of the story, all invented. E-mail addresses are of a domain reserved for examples (RFC 2606). */
export const storyCoordinator = { name: 'Wren Castellan', email: 'wren@larkmoor.example' } as const;
/** Shares the work of the coordinator and reads Spanish. */
export const storySecondCoordinator = {
  name: 'Aurelia Montemayor',
  email: 'aurelia@larkmoor.example',
} as const;
export const storyFunder = { name: 'Teal Abernethy', email: 'teal@larkmoor.example' } as const;

export const storyMembers: readonly StoryMember[] = [
  { name: 'Ives Marrow', sites: ['MILL'], language: 'en', massUnit: 'kg' },
  { name: 'Rocío Peñalver', sites: ['GORSE', 'BRIAR'], language: 'es', massUnit: 'kg' },
  { name: 'Posy Underhill', sites: ['QUARR'], language: 'en', massUnit: 'lb' },
  { name: 'Odell Finch', sites: ['TARN', 'KESTR'], language: 'en', massUnit: 'lb' },
  { name: 'Amaru Quintero', sites: ['ELDER', 'FERN'], language: 'es', massUnit: 'kg' },
  { name: 'Birdie Sallow', sites: ['ASHW', 'ROOK'], language: 'en', massUnit: 'lb' },
  { name: 'Corin Thackeray', sites: ['COLD', 'HAZEL'], language: 'en', massUnit: 'kg' },
  { name: 'Nieve Altamira', sites: ['DUNN', 'LIND'], language: 'es', massUnit: 'kg' },
];

/** The sign-in name of a member: the first name in plain letters. */
export function memberEmail(name: string): string {
  const first = name.split(' ')[0] ?? name;
  const plain = first.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return `${plain}@larkmoor.example`;
}

/** One password for the whole demo: there is nothing behind it but invented data. */
export const demoPassword = 'straw-bucket-lantern';
