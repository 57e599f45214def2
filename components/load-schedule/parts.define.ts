// The parts that the element shows from its start; the others are defined when they are needed.
import '../details-strip/details-strip.define.ts';
import '../sheet-view/sheet-view.define.ts';
import '../sheet-tabs/sheet-tabs.define.ts';
