import type { MassUnit, TemperatureUnit, VolumeUnit } from '@/lib/database/generated/enums';

/** What the pages of a site's next step need of who reads them: which links, and which units. */
export type NextReader = {
  readonly role: string;
  readonly massUnit: MassUnit;
  readonly volumeUnit: VolumeUnit;
  readonly temperatureUnit: TemperatureUnit;
};
