import type {
  Language,
  MassUnit,
  MembershipRole,
  TemperatureUnit,
  VolumeUnit,
} from '@/lib/database/generated/enums';

/** A signed-in person and how they like to read. */
export type Person = {
  readonly sessionId: string;
  readonly personId: string;
  readonly name: string;
  readonly language: Language;
  /** BCP 47 tag for numbers and dates, apart from language, for instance `en-US`. */
  readonly region: string;
  readonly massUnit: MassUnit;
  readonly temperatureUnit: TemperatureUnit;
  readonly volumeUnit: VolumeUnit;
};

/** The token by which a script acts as a person. */
export type ActingToken = {
  readonly id: string;
  readonly mayWrite: boolean;
  /** Ids of the sites it is narrowed to; undefined: all that the person may see. */
  readonly siteScope: readonly string[] | undefined;
};

/** A person acting within one network: what every command and query is asked by. */
export type Actor = Person & {
  readonly networkId: string;
  readonly networkName: string;
  readonly networkTimeZone: string;
  readonly membershipId: string;
  readonly role: MembershipRole;
  /** Sites of a member; empty for the other roles. The database decides by its own rows; statements name them for its indexes. */
  readonly siteIds: readonly string[];
  /** Undefined when the person is here themselves. */
  readonly token?: ActingToken;
};
