import type { Severity } from './finding.ts'

/** The most severe first. */
export const severities = ['error', 'warning', 'information', 'hint'] as const satisfies readonly Severity[]

/** 0 for the most severe. */
export const rank = (severity: Severity): number => severities.indexOf(severity)
