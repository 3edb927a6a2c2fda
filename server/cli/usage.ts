/** What the command line says of itself. */
export const USAGE = `slatwright: slatted screens from text

  slatwright check FILE... [--json]           findings as file:line:column severity code message
  slatwright draw FILE... --out DIR           plans, each run and gate from both sides, sections
  slatwright pieces FILE... [--json | --csv]  every piece with what the saw needs
  slatwright recut FILE... [--json]           where cut slats can go in bays as measured, and what is to cut
  slatwright figures FILE... [--json]         every calculation with its working and what it rests on
  slatwright takeoff FILE... [--json | --csv] [--seconds N] [--out DIR]
                     [--by cost | waste | settings [--more PERCENT]]
                                              what to buy, how to cut it, what it costs; tickets into DIR
  slatwright options FILE... [--json]         the job's options side by side
  slatwright better FILE... [--run NAME] [--json] [--seconds N]
                                              choices for a run that no other beats in cost, waste, sight, evenness
  slatwright pile FILE... [--json]            what the boards on hand still give of each run, by pattern
  slatwright cut LIST [--json] [--seconds N] [--by cost | waste | settings [--more PERCENT]]
                                              boards and cuts for a plain list of lengths (JSON or CSV)

FILE may be a folder: every .slat file directly in it is taken.
Ends with 0 when there are no errors, 1 when there are, 2 when it could not run.
`;

/** Told to the user as it stands; the command ends with 2. */
export class CannotRun extends Error {}
