/** How long after its answer the server with the planted fault commits; a kill in between loses the entry. */
export const lateCommitMilliseconds = 1_500;
