package org.calicograph.wire;

/** Anything said on the control socket. */
public sealed interface Message permits ToKernel, FromKernel { }
