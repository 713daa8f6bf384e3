//! What is given away says what the page says, in every style, and holds no markup of anybody's names.

use crate::support::check;
use crate::support::fitting_session::{Shape, fitting_session};
use reading::link::{PackRequest, pack, unpack};
use session::Session;
use session::question::{Goal, Question, View};
use session::refusal::Refusal;
use telling::check::CheckRequest;
use telling::share::{ShareRequest, Shared};
use text::Voice;

/// Packed and told in English, as every way in does it.
fn share(request: &ShareRequest) -> Result<Shared, Refusal> {
    let ShareRequest { session, question, view, .. } = request.clone();
    let packed = pack(&PackRequest { session, question, view }).ok();
    telling::share::share(request, packed.as_deref(), &Voice::english())
}

fn shared(session: Session, question: Question) -> Shared {
    let address = "https://example.org/club/#example=fair".to_owned();
    share(&ShareRequest { session, question, view: View::default(), address }).expect("a usable request")
}

fn left_out_session() -> Session {
    let mut session = crate::support::in_turn("carry", 5, &[250.0, 263.0], 8.0);
    session.builds[1].name = "Driver [B] *bold* <b>x</b>".into();
    for (at, why) in [(3, "mishit"), (9, "mishit"), (14, "")] {
        session.shots[at].left_out = Some(why.into());
    }
    session
}

#[test]
fn words_in_every_style() {
    let shared = shared(left_out_session(), crate::support::asking("carry"));
    let link = shared.link.expect("small");
    let told = [shared.words.title, shared.words.plain, shared.words.markdown, shared.words.brackets];
    let told = told.join("\n----\n").replace(&link, "LINK") + "\n----\n" + &shared.card.alternative;
    insta::assert_snapshot!(told);
}

#[test]
fn words_about_scatter_and_about_averages() {
    let scatter = Question { goal: Some(Goal::Tighter), ..crate::support::asking("carry") };
    let scatter = shared(crate::support::in_turn("carry", 8, &[250.0, 251.0], 8.0), scatter);
    let averages = crate::support::averages(session::SummaryOf::All, Some(12), Some(8.0), [230.0, 238.0]);
    let averages = shared(averages, crate::support::asking("carry"));
    let told = [scatter.card.alternative, averages.card.alternative, averages.words.plain];
    let link = averages.link.expect("small");
    insta::assert_snapshot!(told.join("\n----\n").replace(&link, "LINK"));
}

#[test]
fn the_link_says_the_same_words() {
    for metric in [false, true] {
        let session = fitting_session(Shape { shots: 60, measures: 6, metric, seed: 3 });
        let shared = shared(session, Question { margin: Some(4.0), ..crate::support::asking("carry") });
        let opened = unpack(&shared.link.expect("small"), &Voice::english()).expect("a link just made");
        let again = check(&CheckRequest { session: opened.session, question: opened.question });
        assert_eq!(again.as_ref(), Ok(&shared.file.report));
        assert!(shared.fits_forums);
    }
}

#[test]
fn what_is_too_long_for_forums_goes_as_a_file() {
    let session = fitting_session(Shape { shots: 300, measures: 10, metric: false, seed: 3 });
    let long = shared(session, crate::support::asking("carry"));
    assert!(long.link.is_some() && !long.fits_forums);
    assert!(long.words.plain.ends_with("The shots are in the file that goes with this."));
    let session = fitting_session(Shape { shots: 5_000, measures: 12, metric: false, seed: 3 });
    assert_eq!(shared(session, crate::support::asking("carry")).link, None);
}

#[test]
fn an_address_cannot_break_out_of_its_words() {
    let request = ShareRequest {
        session: left_out_session(),
        question: crate::support::asking("carry"),
        view: View::default(),
        address: "https://example.org/)[b]\n <script>#x".into(),
    };
    let link = share(&request).expect("a usable request").link.expect("small");
    assert!(link.starts_with("https://example.org/bscript#1."), "{link}");
}
