/** What spent units can go on as; most go into a bed. */
export const secondLifeContainers = ['bed', 'bag', 'bucket', 'tray', 'block'] as const;
