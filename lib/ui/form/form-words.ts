/** The words a form needs of its own, translated on the server so that no catalogue travels to the phone. */
export type FormWords = {
  readonly problemTitle: string;
  readonly errorPrefix: string;
  readonly optional: string;
  readonly confirmTitle: string;
  readonly confirmIntro: string;
  readonly confirmBox: string;
  readonly saving: string;
  readonly chooseOne: string;
  readonly unit: string;
  readonly day: string;
  readonly month: string;
  readonly year: string;
  readonly time: string;
  readonly dateExample: string;
  readonly timeExample: string;
  readonly product: string;
  readonly understood: string;
  readonly twoReadings: string;
  readonly notUnderstood: string;
  /** BCP 47 tag for the figures that a form echoes. */
  readonly locale: string;
};
