import stored from './evidence.json' with { type: 'json' };
import type { EvidenceResults } from './evidenceResults.ts';

/** The last calibration's results; a test works out a part of them anew. */
export const evidence: EvidenceResults = stored as EvidenceResults;
