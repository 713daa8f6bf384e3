//! What takes more than one floor, put together for every way in: reading with the weather that was told, links of
//! sessions and plans, the answer with its link.

use judging::flying::without_standard_air;
use judging::plan::{without_session, written_out};
use reading::link::{self, PackError, PackRequest, PlanToShare, SharedPlan, Unpacked};
use reading::{Hints, ReadResult};
use session::Conditions;
use session::refusal::Refusal;
use telling::refusals;
use telling::share::{ShareRequest, Shared};
use text::Voice;

/// Reads shots as [`reading::read`] does. Where the golfer says what the weather was, or the text does, the shots get
/// their carry in standard air as one more measure, as far as they can be flown.
#[must_use]
pub fn read(text: &str, hints: &Hints, voice: &Voice) -> ReadResult {
    let mut result = reading::read(text, hints, voice);
    if let Some(told) = hints.weather {
        without_standard_air(&mut result.session);
        result.session.weather = Conditions::from_figures(told.figures(), told.temperature_unit);
    }
    if let Some(session) = telling::flying::with_standard_air(&result.session, voice) {
        result.session = session;
    }
    result
}

/// A session and its question as a short text for an address.
///
/// # Errors
/// The [`Refusal`] of a question that does not belong to the session, and of a session too large for any address.
pub fn pack(request: &PackRequest, voice: &Voice) -> Result<String, Refusal> {
    link::pack(request).map_err(|error| match error {
        PackError::DoesNotFit(misfit) => refusals::misfit(&misfit, voice),
        PackError::TooLarge(too_large) => too_large.words(voice),
    })
}

/// What a link's text, or a whole address with it, holds.
///
/// # Errors
/// The [`Refusal`] that says whether the text is no link, was damaged, or needs a later version.
pub fn unpack(text: &str, voice: &Voice) -> Result<Unpacked, Refusal> {
    link::unpack(text, voice).map_err(|error| error.words(voice))
}

/// A plan as a text for an address: every choice that was left open is written out beside a mark that says so.
///
/// # Errors
/// The [`Refusal`] of a plan that is none, and of names that no address could hold.
pub fn pack_plan(request: &PlanToShare, voice: &Voice) -> Result<String, Refusal> {
    let plan = without_session(&request.plan);
    let written = written_out(&plan).map_err(|refused| refusals::plan(&refused, voice))?;
    let shared = PlanToShare { plan, record: request.record.clone() };
    link::pack_plan(&shared, &written).map_err(|too_large| too_large.words(voice))
}

/// What the text of a plan holds.
///
/// # Errors
/// The [`Refusal`] that says whether the text is no link, was damaged, or needs a later version.
pub fn unpack_plan(text: &str, voice: &Voice) -> Result<SharedPlan, Refusal> {
    link::unpack_plan(text, &|plan| written_out(plan).ok(), voice).map_err(|error| error.words(voice))
}

/// Answers the question and makes the answer ready to give away. A session too large for a link has none.
///
/// # Errors
/// The [`Refusal`] of a question that cannot be asked of its session.
pub fn share(request: &ShareRequest, voice: &Voice) -> Result<Shared, Refusal> {
    let ShareRequest { session, question, view, .. } = request.clone();
    let packed = link::pack(&PackRequest { session, question, view }).ok();
    telling::share::share(request, packed.as_deref(), voice)
}
