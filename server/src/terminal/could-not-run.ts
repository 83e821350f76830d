/** The command could not do its work: exit code 2 and this one sentence on standard error. */
export class CouldNotRun extends Error {}
