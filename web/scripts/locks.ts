// One owner tab a notebook, by the browser's own locks: a tab that goes gives its notebook back by going. Tabs speak over
// one channel, so that a tab that only looks sees what the owner wrote, and an owner writes its last key before it yields.

/** How long a tab that takes over waits for the owner's last write, milliseconds. */
const PATIENCE_MS = 600;

type Word = { kind: "wrote" | "yield" | "yielded"; id: string };

let held: { id: string; release: () => void } | null = null;
let lost: (id: string) => void = () => {};
let asked: (id: string) => Promise<void> = async () => {};
let wrote: (id: string) => void = () => {};
const channel = made_channel();

/** A browser that may keep nothing may also refuse its tabs to speak. */
function made_channel(): BroadcastChannel | null {
  try {
    return new BroadcastChannel("layercast");
  } catch {
    return null;
  }
}

/** Wires what happens when another tab takes this one's notebook, asks for it, or has written one. */
export function on_locks(listeners: {
  lost: (id: string) => void;
  asked: (id: string) => Promise<void>;
  wrote: (id: string) => void;
}): void {
  ({ lost, asked, wrote } = listeners);
  channel?.addEventListener("message", (event: MessageEvent<Word>) => {
    const word = event.data;
    if (word.kind === "wrote") wrote(word.id);
    if (word.kind === "yield" && held?.id === word.id) {
      const { id } = word;
      asked(id).finally(() => {
        let_go();
        lost(id);
        tell("yielded", id);
      });
    }
  });
}

/** Takes a notebook if no other tab has it. */
export function take(id: string): Promise<boolean> {
  return request(id, { ifAvailable: true });
}

/** Takes a notebook from the tab that has it, after that tab has written its last key (or does not answer). */
export async function take_over(id: string): Promise<void> {
  const yielded = new Promise<void>((done) => {
    const hear = (event: MessageEvent<Word>) => {
      if (event.data.kind !== "yielded" || event.data.id !== id) return;
      channel?.removeEventListener("message", hear);
      done();
    };
    channel?.addEventListener("message", hear);
    setTimeout(done, PATIENCE_MS);
  });
  tell("yield", id);
  await yielded;
  await request(id, { steal: true });
}

/** Gives the notebook back. */
export function let_go(): void {
  held?.release();
  held = null;
}

/** Tells the other tabs that a notebook has been written. */
export function tell_wrote(id: string): void {
  tell("wrote", id);
}

function tell(kind: Word["kind"], id: string): void {
  channel?.postMessage({ kind, id } satisfies Word);
}

function request(id: string, options: LockOptions): Promise<boolean> {
  const locks = navigator.locks as LockManager | undefined;
  if (!locks) return Promise.resolve(true); // a browser without locks: one tab at a time, as best we can
  return new Promise<boolean>((answer) => {
    locks
      .request(`layercast.${id}`, options, (lock) => {
        if (!lock) {
          answer(false);
          return undefined;
        }
        return new Promise<void>((release) => {
          held = { id, release };
          answer(true);
        });
      })
      .catch((error) => {
        // refused with the store: nothing is kept, so no tab can take anything from another
        if (error instanceof DOMException && error.name === "SecurityError") return answer(true);
        // stolen by another tab
        if (held?.id === id) {
          held = null;
          lost(id);
        }
        answer(false);
      });
  });
}
