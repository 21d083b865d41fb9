type Ask = (go: () => void) => void;

/** One form on the screen, as far as leaving it is concerned. */
export interface FormInUse {
  readonly tell: (isUnsaved: boolean) => void;
  readonly isUnsaved: () => boolean;
  /** How to ask; returns how to stop asking. */
  readonly askBy: (ask: Ask) => () => void;
  /** Runs `go` at once, or hands it to the question where this form holds something unsaved. */
  readonly leaveThen: (go: () => void) => void;
}

/** Which forms hold something that is not saved, known outside of them too. */
export function createLeaving() {
  const forms = new Set<FormInUse>();
  return {
    enter(): FormInUse {
      let unsaved = false;
      let ask: Ask | null = null;
      const form: FormInUse = {
        tell: (isUnsaved) => {
          unsaved = isUnsaved;
          if (isUnsaved) forms.add(form);
          else forms.delete(form);
        },
        isUnsaved: () => unsaved,
        askBy: (by) => {
          ask = by;
          return () => (ask = null);
        },
        leaveThen: (go) => (unsaved && ask ? ask(go) : go()),
      };
      return form;
    },
    leaveThen(go: () => void): void {
      const [unsaved] = forms;
      if (unsaved) unsaved.leaveThen(go);
      else go();
    },
  };
}
