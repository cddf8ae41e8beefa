import type { ShownFigure } from '../shown-figure';

/** A site's place in the funnel: its raw rate among the limits for its number of units. */
export type FunnelPlace = {
  readonly siteId: string;
  readonly events: number;
  readonly units: number;
  readonly percent: number;
  /** Beyond chance alone, and beyond what sites usually differ by. */
  readonly beyondChance: 'above' | 'below' | null;
  readonly beyondUsual: 'above' | 'below' | null;
};

/** Limits that hold 95 in 100, percent, at a number of units: by chance alone, and with the usual differences of sites. */
export type FunnelLimit = {
  readonly units: number;
  readonly low: number;
  readonly high: number;
  readonly usualLow: number;
  readonly usualHigh: number;
};

export type SiteFunnel = {
  readonly targetPercent: number;
  readonly places: readonly FunnelPlace[];
  readonly limits: readonly FunnelLimit[];
};

/** A batch on the control chart of its site. Percent. */
export type CoursePoint = {
  readonly batchId: string;
  readonly on: string;
  readonly events: number;
  readonly units: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly signal: 'above' | 'below' | null;
};

export type SiteCourse = {
  readonly centrePercent: number;
  readonly points: readonly CoursePoint[];
  /** Batches between false alarms, on average, while nothing changes. */
  readonly falseAlarmEvery: number;
  /** Correlation of units of one batch that the limits allow for. */
  readonly correlation: number;
};

/** Where a signal of a site begins, and how many of so many other sites began one of the same side at about that time. */
export type SiteSignal = {
  readonly batchId: string;
  readonly on: string;
  readonly side: 'above' | 'below';
  readonly others: number;
  readonly of: number;
  /** Many of the others did, among so many that the number tells of none: to be told to the site's members, too. */
  readonly shared: boolean;
};

/** What a site may be shown of itself. */
export type SitePart = {
  readonly siteId: string;
  readonly raw: ShownFigure;
  /** Shrunk towards the network: what its own methods and species can be expected to lose there. */
  readonly shrunk: ShownFigure;
  /** What a typical site would lose with this site's methods and species. */
  readonly typical: ShownFigure;
  readonly verdict: 'more' | 'fewer' | 'alike';
  /** Null with too few batches for a course. */
  readonly course: SiteCourse | null;
  /** In the order of the course. */
  readonly signals: readonly SiteSignal[];
  readonly sitesCompared: number;
  readonly asOf: string;
};

export type SitesAnswer = {
  readonly sites: readonly SitePart[];
  readonly funnel: SiteFunnel | null;
};
