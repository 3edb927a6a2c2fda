import { openJobs } from '../jobs/index.ts';

const STOCK = `
board wide { width 5-1/2"; thickness 3/4"; lengths 8', 12' }
board big { width 11-1/4"; thickness 3/4"; lengths 8', 12' }
board thick { width 5-1/2"; thickness 1"; lengths 8', 12' }
post p4 { along 3-1/2"; through 3-1/2"; lengths 10' }
post p5 { along 5-1/2"; through 5-1/2"; lengths 10' }
rail two-by { width 3-1/2"; thickness 1-1/2" }
cleat stop { width 3/4"; thickness 3/4"; lengths 8' }
pattern plain(slat = wide) { repeat slat; gap 1/2"; end anywhere; fit gaps 1/4" to 1" }
`;

/** What a run of the made job states besides where it stands. */
export interface MadeRun {
  readonly place?: string;
  readonly post?: 'p4' | 'p5';
  readonly slats?: string;
  readonly more?: string;
  readonly height?: string;
  readonly slat?: 'wide' | 'thick';
}

const runText = (name: string, { place, post, slats, more, height, slat }: MadeRun) => `
run ${name} {
  ${place ?? ''}
  length 10'
  height ${height ?? "5'"}; bottom 2"
  posts ${post ?? 'p4'}, 2 bays
  ${slats ?? 'slats between posts'}; cleats stop; end gap 1/8"
  fill plain(slat = ${slat ?? 'wide'})
  ${more ?? ''}
}
`;

/** The text of a job of two runs, mole after quay; slats 3/4" thick, posts 3-1/2" square where nothing else is said. */
export function offsetText(mole: MadeRun, quay: MadeRun = {}, job = ''): string {
  return `job "offset" { measure inches to 1/16"; ${job} }\n${STOCK}${runText('quay', quay)}${runText('mole', mole)}`;
}

/** That job, opened. */
export async function openOffset(mole: MadeRun, quay: MadeRun = {}, job = '') {
  const { open } = openJobs({});
  const opened = await open('/made/offset.slat', offsetText(mole, quay, job));
  const { layout } = opened;
  const bridge = opened.run('mole').pieces.filter(({ key }) => /^mole\/(return|filler|panel)\//.test(key));
  return {
    ...opened,
    open: (text: string) => open('/made/offset.slat', text),
    layout,
    bridge,
    codes: opened.findings.map(({ code }) => code),
  };
}
