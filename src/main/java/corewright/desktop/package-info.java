/**
 * The window: a thin shell over the whole chain. The surveyor at the boat works in it.
 *
 * <p><b>In:</b> a survey folder or survey file, and a person's hand. <b>Out:</b> {@link corewright.survey.Edit}s in a survey
 * file, and pictures on a screen.
 *
 * <p><b>Steps.</b> (1) {@link corewright.desktop.state.SurveyOpener} reads a survey and gives an {@link
 * corewright.desktop.state.EditLog}; (2) {@link corewright.desktop.state.Workbench} holds what is open and takes edits, {@code
 * Conclusions} has the chain calculated off the window's thread and says which figures are behind; (3) words for the
 * screen are made of records alone ({@code Steps}, {@code SlipWords}, {@code Readout}); (4) views show them ({@code
 * MainView}, {@code PlanPane}) and hand back what was touched.
 *
 * <p><b>Conventions.</b> Whatever decides or words anything is plain Java and tested without a toolkit; views only place,
 * paint and listen. The plan is painted by {@code drawing.ScreenMap} on a thread of its own and shown as a picture, so that
 * moving it never waits for it. Nothing here calculates: that is the chain's.
 */
@NullMarked
package corewright.desktop;

import org.jspecify.annotations.NullMarked;
