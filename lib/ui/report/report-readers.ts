import type { PersonView } from '@/lib/records/person/list-people.query';

type Reader = Pick<PersonView, 'role' | 'ended' | 'disabled' | 'name'>;

export type ReportReaders = {
  readonly coordinators: number;
  readonly members: number;
  /** Names of funders with an account. */
  readonly funders: readonly string[];
};

/** Who reads a report as soon as it is published: everybody of the network who can sign in. */
export function reportReaders(people: readonly Reader[]): ReportReaders {
  const reading = people.filter(({ ended, disabled }) => !ended && !disabled);
  const of = (role: Reader['role']) => reading.filter((one) => one.role === role);
  return {
    coordinators: of('coordinator').length,
    members: of('member').length,
    funders: of('funder').map(({ name }) => name),
  };
}
