// SPDX-License-Identifier: GPL-3.0-or-later
// A static library needs one source of its own; the files are added by qt_add_resources.
