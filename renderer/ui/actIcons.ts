import calendar from "lucide-react/icons/calendar-days";
import down from "lucide-react/icons/download";
import paper from "lucide-react/icons/file-text";
import whole from "lucide-react/icons/maximize";
import pencil from "lucide-react/icons/pencil";
import plus from "lucide-react/icons/plus";
import printer from "lucide-react/icons/printer";
import back from "lucide-react/icons/undo-2";
import up from "lucide-react/icons/upload";
import wrench from "lucide-react/icons/wrench";

/** What an act does, as a picture beside its words: the same picture for the same act on every screen. */
export const actIcons = {
  add: plus,
  edit: pencil,
  takeIn: up,
  save: down,
  report: paper,
  print: printer,
  service: wrench,
  undo: back,
  wholeScreen: whole,
  calendar,
} as const;

export type ActIcon = keyof typeof actIcons;
