import { expect, it } from 'vitest';
import { reportReaders } from '@/lib/ui/report/report-readers';

const person = { ended: false, disabled: false, name: 'Somebody' } as const;

it('A report is read at once by everybody of the network who can sign in, its funders by name', () => {
  const readers = reportReaders([
    { ...person, role: 'coordinator' },
    { ...person, role: 'member' },
    { ...person, role: 'member' },
    { ...person, role: 'member', ended: true },
    { ...person, role: 'member', disabled: true },
    { ...person, role: 'funder', name: 'Teal Fund' },
    { ...person, role: 'funder', name: 'Gone Fund', ended: true },
  ]);
  expect(readers).toEqual({ coordinators: 1, members: 2, funders: ['Teal Fund'] });
});
