// Cautions that belong beside the picture of a still. Common practice, no published source; each defers to who knows the still.

/** Plain sentences, for the margin of a page. */
export const stillCautions = {
  heating:
    'Never let the kettle run below its heating surface: what is not covered burns dry and scorches. Follow local codes, the maker’s instructions and licensed practice.',
  cooling:
    'Admit air before the still cools. A cooling kettle draws a vacuum: it can collapse, and it sucks a doubler’s liquid back through the vapour pipe. Follow local codes, the maker’s instructions and licensed practice.',
} as const;
